package org.bandtrail.siteinstalls.consents;

import java.time.LocalDate;
import java.util.List;
import org.bandtrail.kernel.SiteId;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Ask;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Decline;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Give;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Renew;
import org.bandtrail.siteinstalls.consents.ConsentCommand.Withdraw;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentAsked;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentDeclined;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentGiven;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentRenewed;
import org.bandtrail.siteinstalls.consents.ConsentEvent.ConsentWithdrawn;
import org.jspecify.annotations.Nullable;

/**
 * One consent.
 *
 * @param state where it is in its life
 * @param siteId the site, null before anything happened
 * @param from first day, null before it is given
 * @param until last day, null if it has no end or is not given
 * @param withdrawnFrom first day on which it no longer holds, null if it was not taken back
 */
public record Consent(
        State state,
        @Nullable SiteId siteId,
        @Nullable LocalDate from,
        @Nullable LocalDate until,
        @Nullable LocalDate withdrawnFrom) {
    /** Before anything happened. */
    public static final Consent NONE = new Consent(State.NEW, null, null, null, null);

    /** The life of a consent. */
    public enum State {
        /** Nothing happened. */
        NEW,
        /** The owner was asked. */
        ASKED,
        /** The owner said yes; it holds from its first to its last day. */
        GIVEN,
        /** The owner said no. */
        DECLINED,
        /** The owner took it back. */
        WITHDRAWN
    }

    /**
     * Decides a command.
     *
     * @throws ConsentRefused if it does not follow on what happened before, or its days contradict each other
     */
    public List<ConsentEvent> decide(ConsentCommand command) {
        return List.of(
                switch (command) {
                    case Ask ask -> asked(ask);
                    case Give give -> given(give);
                    case Decline decline -> declined(decline);
                    case Renew renew -> renewed(renew);
                    case Withdraw withdraw -> withdrawn(withdraw);
                });
    }

    private ConsentEvent asked(Ask ask) {
        mustBe(state == State.NEW, ask, "Give the new question an identity of its own.");
        return new ConsentAsked(ask.consentId(), ask.siteId(), ask.contactId(), ask.scope(), ask.by(), ask.when());
    }

    private ConsentEvent given(Give give) {
        mustBe(state == State.NEW || state == State.ASKED, give, "Renew it, or enter a new consent.");
        if (siteId != null && !siteId.equals(give.siteId())) {
            throw new ConsentRefused.OtherSite(give.consentId(), siteId, give.siteId());
        }
        inOrder(give.consentId(), give.from(), give.until());
        return new ConsentGiven(
                give.consentId(),
                give.siteId(),
                give.contactId(),
                give.scope(),
                give.from(),
                give.until(),
                give.how().strip(),
                give.by(),
                give.when());
    }

    private ConsentEvent declined(Decline decline) {
        mustBe(state == State.ASKED, decline, "Only a question can be declined; a consent is withdrawn.");
        return new ConsentDeclined(decline.consentId(), decline.reason().strip(), decline.by(), decline.when());
    }

    private ConsentEvent renewed(Renew renew) {
        mustBe(state == State.GIVEN, renew, "Only a consent that was given can be renewed; enter a new one.");
        if (from != null) {
            inOrder(renew.consentId(), from, renew.until());
        }
        return new ConsentRenewed(
                renew.consentId(), until, renew.until(), renew.how().strip(), renew.by(), renew.when());
    }

    /** An owner's word is a fact: an earlier day than the one known is taken, only a repeated or later one is not. */
    private ConsentEvent withdrawn(Withdraw withdraw) {
        boolean earlier = withdrawnFrom != null && withdraw.from().isBefore(withdrawnFrom);
        mustBe(state == State.GIVEN || earlier, withdraw, "Only a consent that was given can be withdrawn, once.");
        return new ConsentWithdrawn(
                withdraw.consentId(), withdraw.from(), withdraw.reason().strip(), withdraw.by(), withdraw.when());
    }

    private void mustBe(boolean fits, ConsentCommand command, String instead) {
        if (!fits) {
            throw new ConsentRefused.DoesNotFollow(command.consentId(), state, instead);
        }
    }

    private static void inOrder(ConsentId consentId, LocalDate from, @Nullable LocalDate until) {
        if (until != null && until.isBefore(from)) {
            throw new ConsentRefused.EndsBeforeItStarts(consentId, from, until);
        }
    }

    /** The consent after the event; an event that cannot follow is a damaged history and throws. */
    public Consent evolve(ConsentEvent event) {
        if ((state == State.NEW) != startsHere(event)) {
            throw new IllegalStateException("%s cannot follow on %s.".formatted(event, state));
        }
        return switch (event) {
            case ConsentAsked asked -> new Consent(State.ASKED, asked.siteId(), null, null, null);
            case ConsentGiven given -> new Consent(State.GIVEN, given.siteId(), given.from(), given.until(), null);
            case ConsentDeclined declined -> new Consent(State.DECLINED, siteId, null, null, null);
            case ConsentRenewed renewed -> new Consent(State.GIVEN, siteId, from, renewed.until(), null);
            case ConsentWithdrawn withdrawn -> new Consent(State.WITHDRAWN, siteId, from, until, withdrawn.from());
        };
    }

    private boolean startsHere(ConsentEvent event) {
        return event instanceof ConsentAsked || (event instanceof ConsentGiven && state != State.ASKED);
    }

    /** Whether it holds on that day. */
    public boolean holdsOn(LocalDate day) {
        return from != null
                && !day.isBefore(from)
                && (until == null || !day.isAfter(until))
                && (withdrawnFrom == null || day.isBefore(withdrawnFrom));
    }
}
