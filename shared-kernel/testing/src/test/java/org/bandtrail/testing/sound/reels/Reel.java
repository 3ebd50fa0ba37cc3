package org.bandtrail.testing.sound.reels;

import java.util.List;

/** Decides. */
public record Reel(long mm) {
    List<ReelEvent> decide(ReelCommand command) {
        return switch (command) {
            case ReelCommand.Receive receive -> List.of(new ReelEvent.Received(receive.mm()));
        };
    }
}
