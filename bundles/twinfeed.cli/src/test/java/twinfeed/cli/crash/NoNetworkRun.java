// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

import java.security.Permission;
import java.time.LocalDate;
import twinfeed.cli.Verbs;
import twinfeed.usecase.TwinfeedService;

/**
 * Several command lines, one after the other, in a Java machine that names and refuses whoever asks for the network, be it only to look a
 * name up. Arguments: the words of the command lines, a comma between two of them. Ends with 99 if somebody asked.
 */
public final class NoNetworkRun {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final int ASKED = 99;

    private NoNetworkRun() {}

    /** Lets everything pass but the network. What a later Java machine has in place of this class need not be known here: the tests run on 17. */
    @SuppressWarnings("removal")
    private static final class Guard extends SecurityManager {
        private boolean asked;

        @Override
        public void checkPermission(Permission permission) {
            // Everything else is allowed.
        }

        @Override
        public void checkPermission(Permission permission, Object context) {
            // Everything else is allowed.
        }

        @Override
        public void checkConnect(String host, int port) {
            refuse(host + ":" + port);
        }

        @Override
        public void checkConnect(String host, int port, Object context) {
            refuse(host + ":" + port);
        }

        @Override
        public void checkListen(int port) {
            refuse("to listen at " + port);
        }

        private void refuse(String what) {
            asked = true;
            new SecurityException("asked for the network: " + what).printStackTrace(System.out);
            throw new SecurityException("no network here: " + what);
        }
    }

    /** Runs them and ends with the largest status. */
    @SuppressWarnings("removal")
    public static void main(String[] arguments) {
        Guard guard = new Guard();
        System.setSecurityManager(guard);
        int status = 0;
        for (String line : String.join("\n", arguments).split("\n,\n", -1)) {
            int ended = new Verbs(TwinfeedService.onClassPath(), DAY, System.out, System.err).run(line.split("\n", -1));
            System.out.println("ended with " + ended + ": " + line.replace('\n', ' '));
            status = Math.max(status, ended);
        }
        end(status, guard);
    }

    private static void end(int status, Guard guard) {
        System.exit(guard.asked ? ASKED : status);
    }

    /** Asks for the network on purpose, under the same guard. */
    @SuppressWarnings("removal")
    static void probe() {
        Guard guard = new Guard();
        System.setSecurityManager(guard);
        try (java.net.Socket socket = new java.net.Socket("127.0.0.1", 9)) {
            System.out.println("connected to " + socket);
        } catch (java.io.IOException | SecurityException refused) {
            System.out.println(refused.getMessage());
        }
        end(0, guard);
    }
}
