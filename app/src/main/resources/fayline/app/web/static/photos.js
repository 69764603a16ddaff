// Photos are made smaller here before they are sent, which also leaves out what the camera wrote of place and moment. The form
// then goes as it stands, with smaller files in its fields. Without script the server makes them smaller.
const LONG_EDGE = 2000;
const QUALITY = 0.85;
const MOST = 6;

async function pixels(file) {
  if (self.createImageBitmap) {
    try { return await createImageBitmap(file, { imageOrientation: "from-image" }); } catch { /* perhaps as an image, below */ }
  }
  const image = new Image();
  image.src = URL.createObjectURL(file);
  await image.decode();
  return image;
}

export async function smaller(file) {
  const from = await pixels(file);
  const width = from.naturalWidth || from.width;
  const height = from.naturalHeight || from.height;
  const scale = Math.min(1, LONG_EDGE / Math.max(width, height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(width * scale));
  canvas.height = Math.max(1, Math.round(height * scale));
  const pen = canvas.getContext("2d");
  pen.fillStyle = "#fff";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = "high";
  pen.drawImage(from, 0, 0, canvas.width, canvas.height);
  if (from.close) from.close();
  const blob = await new Promise((done) => canvas.toBlob(done, "image/jpeg", QUALITY));
  if (!blob) throw new Error("no picture came of it");
  return new File([blob], "photo.jpg", { type: "image/jpeg" });
}

function megabytes(files) {
  return (files.reduce((sum, f) => sum + f.size, 0) / 1e6).toFixed(1);
}

function begin(form) {
  const camera = form.querySelector("input[type=file][capture]");
  const choose = form.querySelector("input[type=file][multiple]");
  const box = form.querySelector("[data-chosen]");
  const list = form.querySelector("[data-chosen-list]");
  const says = form.querySelector("[data-chosen-says]");
  let taken = [];
  let round = 0;
  let busy = null;

  function put(files) {
    const carrier = new DataTransfer();
    files.forEach((f) => carrier.items.add(f));
    choose.files = carrier.files;
    camera.value = "";
  }

  function show(files) {
    for (const image of list.querySelectorAll("img")) URL.revokeObjectURL(image.src);
    list.replaceChildren(...files.map((f, i) => {
      const item = document.createElement("li");
      const image = document.createElement("img");
      image.src = URL.createObjectURL(f);
      image.alt = `Photo ${i + 1} of ${files.length}, to be sent`;
      item.append(image);
      return item;
    }));
    box.hidden = files.length === 0;
  }

  async function prepare() {
    const mine = ++round;
    const original = Boolean(form.elements.original?.checked);
    let unable = 0;
    says.textContent = "Making the photos ready.";
    box.hidden = taken.length === 0;
    const ready = [];
    for (const file of taken) {
      try { ready.push(original ? file : await smaller(file)); } catch { unable++; ready.push(file); }
    }
    if (mine !== round) return;
    put(ready);
    show(ready);
    form.dataset.ready = String(ready.length);
    const many = ready.length === 1 ? "1 photo" : `${ready.length} photos`;
    says.textContent = `${many}, ${megabytes(ready)} MB${original ? ", as taken" : ""}.`
      + (unable > 0 ? ` ${unable} of them this browser cannot show: sent as taken, and perhaps refused.` : "");
  }

  function start() {
    delete form.dataset.ready;
    busy = prepare().finally(() => { busy = null; });
  }

  function add(input) {
    const more = [...input.files].slice(0, MOST - taken.length);
    const over = input.files.length - more.length;
    taken = taken.concat(more);
    start();
    if (over > 0) busy = busy.then(() => { says.textContent += ` ${over} left out: at most ${MOST} go with one note.`; });
  }

  for (const input of [camera, choose]) input.addEventListener("change", () => add(input));
  form.elements.original?.addEventListener("change", () => { if (taken.length > 0) start(); });
  function none() {
    taken = [];
    round++;
    put([]);
    show([]);
  }

  form.querySelector("[data-chosen-none]").addEventListener("click", none);
  // a form that begins anew has none of the last note's
  form.addEventListener("reset", none);
  // Whoever is quicker than the phone waits until the photos are ready.
  form.addEventListener("submit", (event) => {
    if (!busy) return;
    event.preventDefault();
    event.stopImmediatePropagation();
    busy.then(() => form.requestSubmit(event.submitter));
  }, true);
}

document.querySelectorAll("form[data-photos]").forEach(begin);
