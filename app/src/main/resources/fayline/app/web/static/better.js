// Follows a search for a better plan: the server says that there is news, the page fetches itself and shows what is new in it.
const state = document.getElementById("better-state");

async function refresh() {
  const answer = await fetch("/better");
  if (!answer.ok) return;
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  const open = state.querySelector("details[open]") !== null;
  for (const id of ["better-state", "better-terms"]) {
    document.getElementById(id).replaceChildren(...page.getElementById(id).childNodes);
  }
  const list = state.querySelector("details");
  if (list) list.open = open;
  // Only the score is spoken: the whole table at each better plan would never end.
  document.getElementById("better-said").textContent = state.querySelector("[data-worth]").textContent;
}

function show(id, shown) {
  const part = document.getElementById(id);
  if (part) part.hidden = !shown;
}

if (state && state.dataset.news) {
  const news = new EventSource(state.dataset.news);
  let waiting = false;
  news.addEventListener("found", () => {
    if (waiting) return;
    waiting = true;
    setTimeout(() => {
      waiting = false;
      refresh();
    }, 400);
  });
  news.addEventListener("over", async () => {
    news.close();
    await refresh();
    for (const id of ["better-stop", "better-wait"]) show(id, false);
    for (const id of ["better-start", "better-tell"]) show(id, true);
  });
}
