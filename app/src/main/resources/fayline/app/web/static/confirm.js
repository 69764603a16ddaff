// Acts that take something away say what, and ask once.
document.addEventListener("submit", (event) => {
  const question = event.submitter?.dataset.confirm || event.target.dataset.confirm;
  if (question && !window.confirm(question)) event.preventDefault();
});
