/** Whether this machine could have the models that read photos: without them the page takes none. */
import { existsSync } from "node:fs";

export const hasPhotos = () => existsSync(new URL("pkg/straight_answer_photo_models.bin", import.meta.url));
