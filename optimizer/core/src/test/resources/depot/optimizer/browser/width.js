// What makes the page wider than its window: [] when its body does not scroll sideways.
(() => {
  const page = document.scrollingElement;
  if (page.clientWidth !== screen.width) return ['laid out for ' + page.clientWidth + ' px on a screen of ' + screen.width];
  const wide = page.scrollWidth > page.clientWidth;
  page.scrollLeft = 10000;
  const moved = page.scrollLeft;
  page.scrollLeft = 0;
  if (!wide && moved === 0) return [];
  const scrolls = (element) => {
    for (let at = element.parentElement; at && at !== document.body; at = at.parentElement) {
      if (getComputedStyle(at).overflowX !== 'visible') return true;
    }
    return false;
  };
  const culprits = [...document.querySelectorAll('body *')]
    .filter((element) => element.getBoundingClientRect().right > page.clientWidth + 0.5 && !scrolls(element))
    .map((element) => element.outerHTML.replace(/\s+/g, ' ').slice(0, 90));
  return [page.scrollWidth + ' px wide in a window of ' + page.clientWidth + ': ' + culprits.slice(0, 3).join(' | ')];
})()
