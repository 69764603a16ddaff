// At the door: takes a one-time code out of the address, where no server ever sees it, and shows a password on request.
const code = document.getElementById("code");
function take() {
    const given = location.hash.slice(1);
    if (!code || !/^[0-9A-Za-z-]{10,20}$/.test(given)) return;
    code.value = given;
    history.replaceState(null, "", location.pathname + location.search);
    const send = document.querySelector("#code-form button");
    send.textContent = "Pair this device";
    send.className = "main";
    send.focus();
}
take();
// Where the door stands open already, the browser loads nothing anew.
addEventListener("hashchange", take);
for (const tick of document.querySelectorAll("[data-shows]")) {
    tick.addEventListener("change", () => {
        document.getElementById(tick.dataset.shows).type = tick.checked ? "text" : "password";
    });
}
