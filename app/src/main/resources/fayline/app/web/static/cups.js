// Says while the scale's readings are typed whether the ratio holds, and what mends it. The program says the same when it takes the cup.
const GRAMS = { g: 1, kg: 1000, oz: 28.349523125, lb: 453.59237 };

function grams(text) {
  const m = /^\s*(\d+(?:[.,]\d*)?|[.,]\d+)\s*(kg|g|oz|lb)\s*$/i.exec(text);
  return m ? { grams: Number(m[1].replace(",", ".")) * GRAMS[m[2].toLowerCase()], unit: m[2].toLowerCase() } : null;
}

function says(form) {
  const resin = grams(form.querySelector("[data-cup-resin]").value);
  const hardener = grams(form.querySelector("[data-cup-hardener]").value);
  if (!resin || resin.grams <= 0) return "";
  const nominal = Number(form.dataset.b) / Number(form.dataset.a);
  const tolerance = Number(form.dataset.tolerance);
  const show = (g, unit) => `${(g / GRAMS[unit]).toFixed(unit === "g" ? 1 : 3)} ${unit}`;
  if (!hardener || hardener.grams <= 0) return `Hardener for it: ${show(resin.grams * nominal, resin.unit)}`;
  const off = hardener.grams / resin.grams / nominal - 1;
  const percent = `${off < 0 ? "\u2212" : "+"}${Math.abs(off * 100).toFixed(1)} %`;
  if (Math.abs(off) <= tolerance + 1e-12) return `Ratio in tolerance, hardener ${percent}.`;
  const add = off < 0
    ? `${show(resin.grams * nominal - hardener.grams, hardener.unit)} of hardener`
    : `${show(hardener.grams / nominal - resin.grams, resin.unit)} of resin`;
  return `Hardener off by ${percent}, ${(tolerance * 100).toFixed(1)} % is allowed: add ${add} while it is wet, or throw the cup away.`;
}

for (const form of document.querySelectorAll("[data-cup]")) {
  const line = form.querySelector("[data-cup-says]");
  const tell = () => {
    const text = says(form);
    if (line.textContent !== text) line.textContent = text;
    line.classList.toggle("wrong", text.includes("add "));
  };
  form.addEventListener("input", tell);
  tell();
}
