// Where the focus is, and how that shows.
(() => {
  const within = 'a[href], summary, button, input, select, textarea, [tabindex]:not([tabindex="-1"])';
  const order = [...document.querySelectorAll(within)].filter((element) => element.checkVisibility());
  const at = document.activeElement;
  if (!at || at === document.body) return {at: -1, count: order.length};
  const style = getComputedStyle(at);
  const box = at.getBoundingClientRect();
  const rgb = (css) => (css.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
  let behind = [255, 255, 255];
  for (let up = at.parentElement; up; up = up.parentElement) {
    const colour = getComputedStyle(up).backgroundColor;
    if (!colour.endsWith(', 0)')) {
      behind = rgb(colour);
      break;
    }
  }
  return {
    at: order.indexOf(at),
    count: order.length,
    words: at.outerHTML.replace(/\s+/g, ' ').slice(0, 90),
    outlined: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2,
    outline: rgb(style.outlineColor),
    behind,
    inView: box.bottom > 0 && box.top < innerHeight && box.right > 0 && box.left < innerWidth,
  };
})()
