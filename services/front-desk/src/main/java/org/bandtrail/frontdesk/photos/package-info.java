/**
 * Photos in pages: the picture itself, sending one, and erasing one. The desk only passes bytes on; what is a picture
 * and how large it may be is decided where it is stored. The fragment {@code photos} puts them on any page.
 */
@NullMarked
package org.bandtrail.frontdesk.photos;

import org.jspecify.annotations.NullMarked;
