/** Types of `photos.mjs`. */
export function hasPhotos(): boolean;
