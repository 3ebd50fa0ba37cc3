package org.bandtrail.eventstore;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import org.axonframework.commandhandling.CommandBus;
import org.axonframework.commandhandling.CommandMessage;
import org.axonframework.commandhandling.CommandResultMessage;
import org.axonframework.commandhandling.GenericCommandMessage;
import org.axonframework.messaging.GenericMessage;
import org.axonframework.messaging.unitofwork.CurrentUnitOfWork;
import org.jspecify.annotations.Nullable;

/** Sends commands to their aggregates, inside a {@link Work} and nowhere else, so that nothing commits on its own. */
public final class Commands {
    private final CommandBus bus;
    private final Map<Class<?>, String> handlerNames = new HashMap<>();

    Commands(CommandBus bus, Iterable<? extends AggregateOf<?>> aggregates) {
        this.bus = bus;
        for (AggregateOf<?> aggregate : aggregates) {
            leaves(aggregate.commands())
                    .forEach(command ->
                            handlerNames.put(command, aggregate.commands().getName()));
        }
    }

    /** The records of a sealed family; a family may be sorted into further sealed interfaces. */
    private static Stream<Class<?>> leaves(Class<?> type) {
        return type.isSealed()
                ? Arrays.stream(type.getPermittedSubclasses()).flatMap(Commands::leaves)
                : Stream.of(type);
    }

    /**
     * Sends a command and returns when its events are decided; they are written when the work commits.
     *
     * @throws Refusal if the rules do not allow the wish
     * @throws IllegalStateException outside a work, or if no aggregate understands the command
     */
    public void send(Object command) {
        ask(command);
    }

    /**
     * As {@link #send}, and returns what the aggregate answers.
     *
     * @return the handler's answer, null if it gives none
     */
    public @Nullable Object ask(Object command) {
        String handler = handlerNames.get(command.getClass());
        if (handler == null) {
            throw new IllegalStateException("No aggregate understands %s. Name its aggregate by an AggregateOf bean."
                    .formatted(command.getClass()));
        }
        if (!CurrentUnitOfWork.isStarted()) {
            throw new IllegalStateException("Command %s was sent outside a work. Use Work.inOneTransaction."
                    .formatted(command.getClass().getSimpleName()));
        }
        AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();
        AtomicReference<@Nullable Object> answer = new AtomicReference<>();
        bus.dispatch(
                new GenericCommandMessage<>(new GenericMessage<>(command), handler),
                (CommandMessage<?> message, CommandResultMessage<?> result) -> {
                    if (result.isExceptional()) {
                        failure.set(result.exceptionResult());
                    } else {
                        answer.set(result.getPayload());
                    }
                });
        Throwable thrown = failure.get();
        if (thrown instanceof RuntimeException runtime) {
            throw runtime;
        }
        if (thrown instanceof Error error) {
            throw error;
        }
        if (thrown != null) {
            throw new IllegalStateException("Command %s failed.".formatted(command), thrown);
        }
        return answer.get();
    }
}
