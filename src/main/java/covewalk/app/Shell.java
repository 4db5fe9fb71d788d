package covewalk.app;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import covewalk.app.desk.Desk;
import covewalk.app.desk.Place;
import covewalk.app.desk.Screen;
import covewalk.app.desk.Settings;
import covewalk.app.desk.Theme;
import covewalk.app.faults.FaultsScreen;
import covewalk.app.reels.ReelsScreen;
import covewalk.app.report.ReportScreen;
import covewalk.app.site.SiteScreen;
import covewalk.app.surveys.SurveysScreen;
import covewalk.app.text.Texts;
import covewalk.app.walk.WalkScreen;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.css.PseudoClass;
import javafx.geometry.Orientation;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;

/** What stands around every place: the way to the others, and above all of it what is not on disk. */
public final class Shell extends BorderPane {

    /** Where lines of forms have to be shorter, in sizes of the text. */
    private static final double NARROW_EM = 26;
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final PseudoClass TALL = PseudoClass.getPseudoClass("tall");

    private static final Map<Place, Function<Desk, Screen>> SCREENS = Map.of(
            Place.SURVEYS, SurveysScreen::new, Place.SITE, SiteScreen::new, Place.WALK, WalkScreen::new,
            Place.FAULTS, FaultsScreen::new, Place.REELS, ReelsScreen::new, Place.REPORT, ReportScreen::new);

    private final Desk desk;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("Covewalk");
    private final Map<Place, Screen> screens = new EnumMap<>(Place.class);
    private Desk inUse;
    private Navigation navigation;
    private TroubleBar trouble;
    private TroubleRoom top;
    private Locale language;

    public Shell(Desk desk) {
        this.desk = desk;
        getStyleClass().add("shell");
        build();
        desk.placeProperty().addListener((property, before, now) -> show(now));
        desk.surveyProperty().addListener((property, before, now) -> name());
        widthProperty().addListener((property, before, now) -> turn());
        heightProperty().addListener((property, before, now) -> turn());
    }

    /** The name of the window. */
    public ReadOnlyStringProperty titleProperty() {
        return title.getReadOnlyProperty();
    }

    /** Gives a scene the look that was chosen, now and whenever another is. */
    public void dress(Scene scene) {
        scene.getStylesheets().add(Shell.class.getResource("look.css").toExternalForm());
        for (Place place : Place.values()) {
            scene.getAccelerators().put(new KeyCodeCombination(KeyCode.valueOf("DIGIT" + (place.ordinal() + 1)),
                    KeyCombination.SHORTCUT_DOWN), () -> desk.go(place));
        }
        desk.memoryProperty().addListener((property, before, now) -> {
            if (!before.settings().equals(now.settings())) {
                dress(now.settings());
            }
        });
        dress(desk.settings());
    }

    private void dress(Settings settings) {
        Application.setUserAgentStylesheet(
                (settings.theme() == Theme.DARK ? new PrimerDark() : new PrimerLight()).getUserAgentStylesheet());
        for (Theme theme : Theme.values()) {
            pseudoClassStateChanged(PseudoClass.getPseudoClass(theme.code()), theme == settings.theme());
        }
        setStyle(String.format(Locale.ROOT, "-fx-font-size: %.1fpx;", TextSize.USUAL_PX * settings.textPercent() / 100));
        if (settings.language().equals(language)) {
            turn();
        } else {
            build();
        }
    }

    /** Everything anew: in another language, or at the start. The screens before hear of nothing any more. */
    private void build() {
        if (inUse != null) {
            inUse.leave();
        }
        inUse = desk.another();
        language = desk.settings().language();
        screens.clear();
        Texts texts = desk.texts(Shell.class);
        navigation = new Navigation(inUse, texts);
        trouble = new TroubleBar(inUse, texts);
        top = new TroubleRoom(trouble, () -> Platform.runLater(this::turn)); // it is laid out just now
        setTop(top);
        turn();
        show(desk.placeProperty().get());
        name();
        Desk now = inUse;
        Platform.runLater(() -> prepare(now));
    }

    /** The screens that nobody has gone to yet, one after the other: the first is seen before the others are made. */
    private void prepare(Desk generation) {
        Optional<Place> next = Arrays.stream(Place.values()).filter(place -> !screens.containsKey(place)).findFirst();
        if (generation == inUse && next.isPresent()) {
            screen(next.get());
            Platform.runLater(() -> prepare(generation));
        }
    }

    private Screen screen(Place place) {
        return screens.computeIfAbsent(place, missing -> SCREENS.get(missing).apply(inUse));
    }

    private void show(Place place) {
        Screen screen = screen(place);
        setCenter(screen.view());
        applyCss(); // what scrolls is part of the scene only from now on, and can have the focus
        layout();
        screen.shown();
    }

    /** The way to the other places stands at the left, and below in a window that is higher than wide; both below the trouble bar. */
    private void turn() {
        boolean tall = getHeight() > getWidth();
        pseudoClassStateChanged(TALL, tall);
        double chosen = TextSize.USUAL_PX * desk.settings().textPercent() / 100;
        double left = top.fit(getWidth(), getHeight(), chosen);
        navigation.turn(tall ? Orientation.HORIZONTAL : Orientation.VERTICAL, tall ? getWidth() : left, chosen);
        pseudoClassStateChanged(NARROW, getWidth() < NARROW_EM * chosen);
        if (tall) {
            setLeft(null);
            setBottom(navigation);
        } else {
            setBottom(null);
            setLeft(navigation);
        }
    }

    private void name() {
        String site = desk.survey() == null ? "" : desk.survey().survey().site().name();
        title.set(site.isBlank() ? "Covewalk" : site + " \u2013 Covewalk");
    }

    /** Whether nothing would be lost; else the person is asked, in the page. */
    public boolean mayClose() {
        return trouble.mayClose();
    }
}
