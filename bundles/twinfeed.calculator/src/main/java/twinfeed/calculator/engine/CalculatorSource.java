// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.security.CodeSource;
import twinfeed.calculator.Calculator;

/** Where a calculator came from. */
final class CalculatorSource {
    private CalculatorSource() {}

    /** The file or folder that holds its class; the name of the class where nobody knows. */
    static String of(Calculator calculator) {
        CodeSource code = calculator.getClass().getProtectionDomain().getCodeSource();
        String path = code == null || code.getLocation() == null
                ? ""
                : code.getLocation().getPath().replaceAll("/+$", "");
        String file = path.substring(path.lastIndexOf('/') + 1);
        return file.isEmpty() ? calculator.getClass().getName() : file;
    }
}
