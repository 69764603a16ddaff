// The shop's clock, not the phone's: a page says what time it was in the shop when it was made.
const root = document.documentElement;
const madeAt = Date.parse(root.dataset.now || "");

// How far the shop's clock is ahead of this device's. A page that was kept on the phone says when it was fetched; one that comes fresh
// was made now.
export const ahead = Number.isNaN(madeAt) ? 0 : madeAt - Number(root.dataset.keptAt || Date.now());

export const shopNow = () => Date.now() + ahead;
