/**
 * Photos of trees, bands and sites. What comes in is decoded and written anew as a JPEG of limited size, so that no
 * metadata (where and with which device it was taken) and nothing that is no picture gets into the books. Pictures can
 * show people, so they lie in an ordinary table and can be erased; events carry the {@link
 * org.bandtrail.siteinstalls.photos.PhotoId} alone. A file that is no JPEG or PNG, too large or of too many pixels is
 * refused before it is decoded.
 */
@NullMarked
package org.bandtrail.siteinstalls.photos;

import org.jspecify.annotations.NullMarked;
