// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.crash;

/** A program that asks for the network, to show that the guard of {@link NoNetworkRun} catches it. */
public final class NetworkProbe {
    private NetworkProbe() {}

    /** Asks. */
    public static void main(String[] arguments) {
        NoNetworkRun.probe();
    }
}
