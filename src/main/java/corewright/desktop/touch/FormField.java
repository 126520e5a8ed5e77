package corewright.desktop.touch;

import java.util.List;

/**
 * One value of a thing that is touched.
 *
 * @param id unique within its form
 * @param label what it is, with its unit
 * @param text as it is
 * @param options what it may be; empty where anything may be typed
 */
record FormField(String id, String label, String text, List<String> options) {
    FormField {
        options = List.copyOf(options);
    }
}
