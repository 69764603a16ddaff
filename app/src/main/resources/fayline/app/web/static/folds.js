// On a phone all but the first things asked are folded. At a desk there is room, and on paper nothing can be unfolded.
const wide = matchMedia("(min-width: 900px)");

function unfold() {
  for (const d of document.querySelectorAll("details[data-open-wide]")) d.open = true;
}

if (wide.matches) unfold();
wide.addEventListener("change", () => { if (wide.matches) unfold(); });
addEventListener("beforeprint", unfold);

// A link to something folded unfolds it.
function unfoldTarget() {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (target?.tagName === "DETAILS") {
    target.open = true;
    target.scrollIntoView({ block: "start" });
  }
}

unfoldTarget();
addEventListener("hashchange", unfoldTarget);

// The strip of states begins at the one that counts now.
for (const now of document.querySelectorAll(".strip .now")) {
  const strip = now.closest(".strip");
  strip.scrollLeft = now.getBoundingClientRect().left - strip.getBoundingClientRect().left;
}
