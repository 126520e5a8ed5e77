package corewright.intake.text;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Units a survey's lengths may be in. The inch is 25.4 mm exactly (international yard and pound agreement, 1959). */
public enum LengthUnit {
    MM(1),
    CM(10),
    M(1000),
    IN(25.4),
    FT(304.8);

    public final double mm;

    LengthUnit(double mm) {
        this.mm = mm;
    }

    public static @Nullable LengthUnit named(String name) {
        for (LengthUnit unit : values()) {
            if (unit.toString().equals(name.toLowerCase(Locale.ROOT))) {
                return unit;
            }
        }
        return null;
    }

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT);
    }
}
