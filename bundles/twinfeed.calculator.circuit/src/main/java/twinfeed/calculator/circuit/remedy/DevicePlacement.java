// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.List;
import twinfeed.calculator.Remedy;

/** Where a new protective device is put, and what that needs beside the device. */
enum DevicePlacement {
    /** In the way of the present device; what lies ahead of that stays ahead. */
    IN_PLACE("device-", "inPlace"),
    /** In a spare way that lies behind the main switch only. */
    OWN_WAY("own-way-", "ownWay"),
    /** In a small enclosure of its own at the tails. */
    ENCLOSURE("enclosure-", "enclosure", Remedy.Item.of("tails-enclosure", 1)),
    /** In its present way, with the residual-current device ahead replaced by a time-delayed one. */
    DELAYED_MAIN(
            "delayed-main-",
            "delayedMain",
            Remedy.Item.of("rccb-delayed-100", 1),
            Remedy.Item.of("task-change-device", 1)),
    /** In a new consumer unit. */
    CONSUMER_UNIT(
            "consumer-unit-", "consumerUnit", Remedy.Item.of("consumer-unit", 1), Remedy.Item.of("notification", 1));

    private final String prefix;
    private final String word;
    private final List<Remedy.Item> items;

    DevicePlacement(String prefix, String word, Remedy.Item... items) {
        this.prefix = prefix;
        this.word = word;
        this.items = List.of(items);
    }

    /** What the ids of its remedies begin with. */
    String prefix() {
        return prefix;
    }

    /** Key of its words, {@code placement.KEY}. */
    String key() {
        return "placement." + word;
    }

    /** Key of its words for a customer, who reads of everything that is charged, {@code customer.placement.KEY}. */
    String customerKey() {
        return "customer.placement." + word;
    }

    /** What it needs beside the device. */
    List<Remedy.Item> items() {
        return items;
    }
}
