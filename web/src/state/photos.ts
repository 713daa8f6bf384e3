/** Whether this build of the site reads photos, and which files are some. */

/** False where the models could not be had when the site was built. */
declare const HAS_PHOTOS: boolean;

export const takesPhotos: boolean = HAS_PHOTOS;

const ENDING = /\.(?:jpe?g|png|webp|heic|heif|gif|avif|bmp)$/i;

/** Whether all of some files are pictures. */
export const arePhotos = (files: readonly Pick<File, "type" | "name">[]): boolean =>
  takesPhotos && files.length > 0 && files.every(({ type, name }) => type.startsWith("image/") || ENDING.test(name));
