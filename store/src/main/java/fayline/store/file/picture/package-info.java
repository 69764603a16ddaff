/**
 * Pictures from phones and cameras: judged by their headers before a pixel is decoded, cleaned of what is no picture, made
 * smaller where nobody asked for the original. Start at {@link fayline.store.file.picture.PictureReader}. The form of JPEG files
 * follows ITU-T T.81 [jpeg-t81], of what cameras write into them Exif 2.32 [exif232], of PNG files ISO/IEC 15948 [png]. Image
 * libraries of the JDK are used here and nowhere else.
 */
@NullMarked
package fayline.store.file.picture;

import org.jspecify.annotations.NullMarked;
