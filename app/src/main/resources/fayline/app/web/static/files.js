// A chosen file goes into a text field as text, which is sent like anything typed. Without script the text is pasted.
for (const input of document.querySelectorAll("input[type=file][data-into]")) {
  input.addEventListener("change", async () => {
    const into = document.getElementById(input.dataset.into);
    const file = input.files[0];
    if (!file || !into) return;
    const text = await file.text();
    const fits = text.length <= into.maxLength;
    input.setCustomValidity(fits ? "" : `The file is ${text.length} characters long; ${into.maxLength} are taken.`);
    input.reportValidity();
    if (fits) into.value = text;
  });
}
