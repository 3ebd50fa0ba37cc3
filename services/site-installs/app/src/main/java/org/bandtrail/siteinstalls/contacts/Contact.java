package org.bandtrail.siteinstalls.contacts;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * How to reach somebody who may give consent.
 *
 * @param contactId the pseudonym events use
 * @param name who it is, empty once erased
 * @param phone empty if not known or erased
 * @param email empty if not known or erased
 * @param address empty if not known or erased
 * @param erasedAt when the personal data was erased, null while it is kept
 */
public record Contact(
        String contactId,
        String name,
        String phone,
        String email,
        String address,
        @Nullable Instant erasedAt) {}
