// Sheets of unequal height stand close below each other. Each is given to the column that is shortest so far, in reading order,
// and stays in it when something unfolds. Without this the sheets stand in rows.
const UNIT = 4;
const placed = new WeakMap();

function pack(grid) {
  const style = getComputedStyle(grid);
  const columns = style.gridTemplateColumns.split(" ").length;
  const sheets = [...grid.children];
  if (columns < 2) {
    grid.classList.remove("packed");
    sheets.forEach((s) => { s.style.gridRow = ""; s.style.gridColumn = ""; });
    placed.delete(grid);
    return;
  }
  const gap = parseFloat(style.columnGap) || 0;
  grid.classList.add("packed");
  const before = placed.get(grid);
  const known = before && before.columns === columns ? before.of : new Map();
  const foot = new Array(columns).fill(0);
  for (const sheet of sheets) {
    const tall = sheet.getBoundingClientRect().height;
    if (!known.has(sheet)) known.set(sheet, foot.indexOf(Math.min(...foot)));
    const column = known.get(sheet);
    const span = tall === 0 ? 1 : Math.ceil((tall + gap) / UNIT);
    sheet.style.gridColumn = String(column + 1);
    sheet.style.gridRow = `${foot[column] + 1} / span ${span}`;
    foot[column] += tall === 0 ? 0 : span;
  }
  placed.set(grid, { columns, of: known });
}

const watch = "ResizeObserver" in window
  ? new ResizeObserver((all) => new Set(all.map((e) => e.target.closest("[data-pack]"))).forEach((g) => g && pack(g)))
  : null;

function start() {
  for (const grid of document.querySelectorAll("[data-pack]")) {
    pack(grid);
    if (watch) { watch.observe(grid); [...grid.children].forEach((s) => watch.observe(s)); }
  }
}

start();
for (const renewed of ["htmx:afterSwap", "fayline:renewed"]) document.addEventListener(renewed, start);
