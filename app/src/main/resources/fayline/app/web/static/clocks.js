// Counts down to a moment by the shop's clock.
import { shopNow } from "/static/shop-clock.js";

function words(ms) {
  const minutes = Math.floor(Math.abs(ms) / 60000);
  const days = Math.floor(minutes / 1440);
  const hours = Math.floor((minutes % 1440) / 60);
  const rest = minutes % 60;
  if (days > 1) return `${days} d ${hours} h`;
  if (minutes >= 60) return `${days * 24 + hours} h ${String(rest).padStart(2, "0")} min`;
  return `${rest} min`;
}

function tick() {
  const now = shopNow();
  for (const el of document.querySelectorAll("time[data-until]")) {
    const left = Date.parse(el.dateTime) - now;
    el.textContent = left > 0 ? `${words(left)} left` : `${words(left)} ago`;
    el.classList.toggle("clock-due", left <= 0);
  }
  for (const el of document.querySelectorAll("time[data-since]")) {
    el.textContent = words(now - Date.parse(el.dateTime));
  }
}

tick();
setInterval(tick, 5000);
for (const renewed of ["htmx:afterSwap", "fayline:renewed", "fayline:pot"]) document.addEventListener(renewed, tick);
