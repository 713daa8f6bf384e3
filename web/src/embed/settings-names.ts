/** Attributes of the element that go into the frame's address as they are; `link` and `csv` go their own ways. */
export const SETTINGS = ["units", "lang", "accent", "scheme", "measure", "margin", "goal", "parts"] as const;
