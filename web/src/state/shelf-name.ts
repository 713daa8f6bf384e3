/** Where the service worker lays what is shared with the page (`public/share-target.js`). */
export const SHELF = "shared";
