/** The site's whole address where the host said it, else `./`. */
export function siteAddress(): string;
