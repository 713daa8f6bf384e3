// Where the preview's picture stands: whole where the host said where the site is, SITE_ADDRESS, else beside the page.
export const siteAddress = () => process.env.SITE_ADDRESS?.replace(/\/*$/, "/") ?? "./";
