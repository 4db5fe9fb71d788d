package covewalk.app;

import covewalk.app.desk.Place;

/** A small drawing for each place, ours, as an SVG path in a square of 24. */
final class PlaceDrawing {

    private PlaceDrawing() {
    }

    static String of(Place place) {
        return switch (place) {
            case SURVEYS -> "M3 5h7l2 3h9v12H3z"; // a folder
            case SITE -> "M2 6h20v3H2z M4 12h6v2H4z M12 12h8v2h-8z M6 17h2v3H6z M16 17h2v3h-2z"; // a ceiling, its strip, feeds
            case WALK -> "M6 21L10 3h1.5L8.5 16h7L12.5 3H14l4 18h-1.7l-.9-4H8.6l-.9 4z M9.8 11h4.4v1.5H9.8z"; // a ladder
            case FAULTS -> "M2 13h10v5H2z M12 8h10v5H12z"; // two bars that step
            case REELS -> "M12 3a9 9 0 1 0 .01 0z M12 6a6 6 0 1 1-.01 0z M12 9.5a2.5 2.5 0 1 0 .01 0z"; // a reel
            case REPORT -> "M5 2h10l4 4v16H5z M8 10h8v1.6H8z M8 13.5h8v1.6H8z M8 17h5v1.6H8z"; // a written page
        };
    }
}
