// Says at which line the cursor stands, and goes to the line that an address names.
const text = document.querySelector("textarea[data-lines]");
const where = document.getElementById("where");

function lineStart(n) {
  let at = 0;
  for (let i = 1; i < n; i++) {
    const next = text.value.indexOf("\n", at);
    if (next < 0) break;
    at = next + 1;
  }
  return at;
}

function tell() {
  const line = text.value.slice(0, text.selectionStart).split("\n").length;
  where.textContent = `Line ${line} of ${text.value.split("\n").length}`;
}

if (text && where) {
  ["keyup", "click", "focus", "input"].forEach((e) => text.addEventListener(e, tell));
  const asked = /^#line-(\d+)$/.exec(location.hash);
  if (asked) {
    const n = Number(asked[1]);
    text.focus();
    text.setSelectionRange(lineStart(n), lineStart(n + 1));
    const height = parseFloat(getComputedStyle(text).lineHeight) || 20;
    text.scrollTop = Math.max(0, (n - 4) * height);
    tell();
  }
}
