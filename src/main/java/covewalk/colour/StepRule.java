package covewalk.colour;

import java.util.Optional;

/** How a colour difference is counted in steps. The two rules part by up to a third at cool white: always name the rule. */
public enum StepRule {

    /** Distance in u'v' divided by {@link UvPrime#STEP}. */
    UV_CIRCLE("uv-circle"),

    /** SDCM by the ellipse of the nearest standard colour of IEC 60081. */
    ELLIPSE("ellipse");

    private final String code;

    StepRule(String code) {
        this.code = code;
    }

    /** The word for this rule in files and output. */
    public String code() {
        return code;
    }

    /** The rule of this code; empty where there is none. */
    public static Optional<StepRule> of(String code) {
        for (StepRule rule : values()) {
            if (rule.code.equals(code)) {
                return Optional.of(rule);
            }
        }
        return Optional.empty();
    }
}
