package org.bandtrail.supplystock.transfers;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The rules of a transfer.
 *
 * @param sent what was sent, null until somebody sends
 * @param ended whether it arrived or was called off
 */
public record Transfer(TransferEvent.@Nullable Sent sent, boolean ended) {
    /** A transfer nobody has sent. */
    public static final Transfer UNKNOWN = new Transfer(null, false);

    /**
     * What a command makes happen.
     *
     * @throws TransferRefused if the wish cannot be granted
     */
    public List<TransferEvent> decide(TransferCommand command) {
        return switch (command) {
            case TransferCommand.Send send -> send(send);
            case TransferCommand.Arrive arrive -> {
                onItsWay(arrive.transferId());
                yield List.of(
                        new TransferEvent.Arrived(arrive.transferId(), arrive.lines(), arrive.by(), arrive.occurred()));
            }
            case TransferCommand.CallOff off -> {
                onItsWay(off.transferId());
                if (off.reason().isBlank()) {
                    throw new TransferRefused.ReasonMissing(off.transferId());
                }
                yield List.of(new TransferEvent.CalledOff(
                        off.transferId(), off.reason().strip(), off.by(), off.occurred()));
            }
        };
    }

    private List<TransferEvent> send(TransferCommand.Send send) {
        if (sent != null) {
            throw new TransferRefused.TransferSentAlready(send.transferId());
        }
        if (send.lines().isEmpty()) {
            throw new TransferRefused.TransferEmpty(send.transferId());
        }
        if (send.from().equals(send.to())) {
            throw new TransferRefused.TransferNowhere(send.transferId(), send.to());
        }
        return List.of(new TransferEvent.Sent(
                send.transferId(), send.from(), send.to(), send.carrier(), send.lines(), send.by(), send.occurred()));
    }

    private void onItsWay(TransferId transfer) {
        if (sent == null) {
            throw new TransferRefused.TransferUnknown(transfer);
        }
        if (ended) {
            throw new TransferRefused.TransferEnded(transfer);
        }
    }

    /** The transfer after an event. */
    public Transfer evolve(TransferEvent event) {
        return switch (event) {
            case TransferEvent.Sent on -> new Transfer(on, false);
            case TransferEvent.Arrived _, TransferEvent.CalledOff _ -> new Transfer(sent, true);
        };
    }
}
