// Reads the square code on a lot's label from a photo: by the browser where it can, which needs no network, else by the program.
import { smaller } from "/static/photos.js";

async function here(file) {
  if (!("BarcodeDetector" in self)) return "";
  try {
    const found = await new self.BarcodeDetector({ formats: ["qr_code"] }).detect(await createImageBitmap(file));
    return found.length > 0 ? found[0].rawValue : "";
  } catch { return ""; }
}

async function there(file, form) {
  const sent = new FormData();
  sent.append("csrf", form.elements.csrf.value);
  sent.append("photo", file);
  const answer = await fetch("/stores/label", { method: "POST", body: sent, headers: { Accept: "text/plain" } });
  const type = answer.headers.get("Content-Type") || "";
  if (!type.startsWith("text/plain")) return { ok: false, text: "The label was not read. Type its number." };
  return { ok: answer.ok, text: await answer.text() };
}

function number(code) {
  try { return new URL(code).searchParams.get("lot") || code; } catch { return code; }
}

async function read(box, input) {
  const field = box.closest(".lots").querySelector("[data-scan]");
  const says = box.querySelector("[data-label-says]");
  const photo = input.files[0];
  if (!photo) return;
  says.textContent = "Reading the label.";
  try {
    const file = await smaller(photo).catch(() => photo);
    const code = await here(file);
    const answer = code ? { ok: true, text: number(code) } : await there(file, input.form);
    says.textContent = answer.ok ? `Read: lot ${answer.text}.` : answer.text;
    if (answer.ok) {
      field.value = answer.text;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
  } catch {
    says.textContent = "There is no network to read the label by. Type its number.";
  } finally {
    input.value = "";
  }
}

for (const box of document.querySelectorAll("[data-label]")) {
  const input = box.querySelector("[data-label-photo]");
  box.hidden = false;
  input.addEventListener("change", () => read(box, input));
}
