// Follows a search for a better plan: the server says that there is news, the page fetches how it stands.
const state = document.getElementById("better-state");

async function refresh() {
  const answer = await fetch("/better/state", { headers: { "HX-Request": "true" } });
  if (answer.ok) state.innerHTML = await answer.text();
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
    document.getElementById("better-stop").hidden = true;
    document.getElementById("better-start").hidden = false;
  });
}
