package corewright.contour;

/** One level of one raster: its line parts {@code value >= level} from the rest. No data is never above. */
public record Cut(Raster raster, double level) {
    public Cut {
        if (Double.isNaN(level)) {
            throw new IllegalArgumentException("a cut needs a level");
        }
    }
}
