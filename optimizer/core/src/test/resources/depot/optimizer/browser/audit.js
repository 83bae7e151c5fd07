// Looks at the page that is shown and returns {faults: {check: [words]}, counts: {check: things looked at},
// texts: [...], marks: [...], charts: [...]}. Colours are those the browser computed; what is enough contrast is decided elsewhere.
(() => {
  const faults = {};
  const counts = {};
  const fault = (check, words) => (faults[check] ??= []).push(words);
  const look = (check, things) => {
    counts[check] = (counts[check] ?? 0) + things.length;
    return things;
  };
  const all = (selector, within = document) => [...within.querySelectorAll(selector)];
  const short = (element) => element.outerHTML.replace(/\s+/g, ' ').slice(0, 90);
  const shown = (element) => element.checkVisibility({visibilityProperty: true}) && element.getClientRects().length > 0;

  // No scripts, nothing asked for from elsewhere.
  look('STANDALONE', all('*')).forEach((element) => {
    const outside = [...element.attributes].find((a) => /^(src|srcset|href|xlink:href|data|action|poster)$/.test(a.name) && /^(\w+:)?\/\//.test(a.value));
    const handler = [...element.attributes].find((a) => a.name.startsWith('on'));
    if (element.localName === 'script' || handler) fault('STANDALONE', 'script: ' + short(element));
    if (outside) fault('STANDALONE', 'leads elsewhere: ' + short(element));
  });

  // Headings.
  let before = 0;
  look('HEADINGS', all('h1,h2,h3,h4,h5,h6')).forEach((heading) => {
    const level = Number(heading.localName[1]);
    if (level > before + 1) fault('HEADINGS', 'a level is left out before ' + short(heading));
    if (!heading.textContent.trim()) fault('HEADINGS', 'no words in ' + short(heading));
    before = level;
  });
  if (all('h1').length !== 1) fault('HEADINGS', all('h1').length + ' first headings');

  // Tables.
  look('TABLES', all('table')).forEach((table) => {
    if (!table.caption?.textContent.trim()) fault('TABLES', 'no caption: ' + short(table));
    if (!all('thead th', table).length) fault('TABLES', 'no headings of columns: ' + short(table));
    all('th', table).forEach((th) => {
      if (!['col', 'row', 'colgroup', 'rowgroup'].includes(th.getAttribute('scope'))) fault('TABLES', 'no scope: ' + short(th));
    });
    all('tbody tr, tfoot tr', table).forEach((row) => {
      if (!row.querySelector('th') && !row.parentElement.querySelector('th[scope=rowgroup]')) fault('TABLES', 'nothing names the row ' + short(row));
    });
  });

  // Drawings.
  all('svg').forEach((svg) => {
    if (svg.getAttribute('aria-hidden') === 'true') return;
    look('CHARTS', [svg]);
    const title = svg.querySelector('title');
    const description = svg.querySelector('desc');
    if (svg.getAttribute('role') !== 'img') fault('CHARTS', 'no role: ' + short(svg));
    if (!title?.textContent.trim()) fault('CHARTS', 'no title: ' + short(svg));
    if (!description?.textContent.trim()) fault('CHARTS', 'no description: ' + short(svg));
    const labels = (svg.getAttribute('aria-labelledby') ?? '').split(' ').filter(Boolean).map((id) => document.getElementById(id));
    if (!labels.includes(title) || !labels.includes(description)) fault('CHARTS', 'not labelled by its title and description: ' + short(svg));
    const figure = svg.closest('figure');
    const numbers = figure && (figure.querySelector('table') ?? (figure.nextElementSibling?.querySelector('table')));
    if (!numbers || !numbers.tBodies[0]?.rows.length) fault('CHARTS', 'no table with its numbers: ' + short(svg));
  });

  // Anchors.
  const ids = all('[id]').map((element) => element.id);
  ids.filter((id, at) => ids.indexOf(id) !== at).forEach((id) => fault('LINKS', 'two places have the name ' + id));
  const links = look('LINKS', all('a[href]')).map((a) => a.href);
  all('a[href]').filter((a) => !a.textContent.trim()).forEach((a) => fault('LINKS', 'no words in ' + short(a)));

  // Colours.
  const parse = (css) => {
    const rgb = css.match(/^rgba?\(([\d.]+), ([\d.]+), ([\d.]+)(?:, ([\d.]+))?\)$/);
    if (!rgb) throw new Error('unknown colour ' + css);
    return [Number(rgb[1]), Number(rgb[2]), Number(rgb[3]), rgb[4] === undefined ? 1 : Number(rgb[4])];
  };
  const over = (top, below) => [0, 1, 2].map((i) => top[i] * top[3] + below[i] * (1 - top[3])).concat(1);
  const background = (element) => {
    const layers = [];
    for (let at = element; at; at = at.parentElement) {
      if (at.namespaceURI.endsWith('/svg')) continue;
      const style = getComputedStyle(at);
      if (style.backgroundImage !== 'none') throw new Error('a picture behind ' + short(element));
      layers.push(parse(style.backgroundColor));
      if (layers.at(-1)[3] === 1) break;
    }
    return layers.reverse().reduce((below, layer) => over(layer, below), [255, 255, 255, 1]);
  };
  const faded = (element) => {
    let opacity = 1;
    for (let at = element; at; at = at.parentElement) opacity *= Number(getComputedStyle(at).opacity);
    return opacity;
  };
  const on = (css, element) => {
    const colour = parse(css);
    colour[3] *= faded(element);
    return over(colour, background(element));
  };

  const texts = new Map();
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walker.nextNode()) {
    const element = walker.currentNode.parentElement;
    if (!walker.currentNode.data.trim() || ['style', 'title', 'desc'].includes(element.localName) || !shown(element)) continue;
    const style = getComputedStyle(element);
    const colour = on(element.namespaceURI.endsWith('/svg') ? style.fill : style.color, element);
    const behind = background(element);
    const size = parseFloat(style.fontSize);
    // Large in the words of the guidelines: 18 points, or 14 points and bold.
    const large = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700);
    const key = [colour, behind, large].join();
    if (!texts.has(key)) texts.set(key, {colour, behind, large, words: walker.currentNode.data.trim().slice(0, 40)});
  }

  // Marks of drawings: what has to be seen to read them. Rules that only help the eye along do not count.
  const marks = new Map();
  const charts = [];
  all('svg').filter(shown).forEach((svg) => {
    const series = new Map();
    all('path, rect, circle, line', svg).forEach((shape) => {
      if (shape.matches('.grid, .band')) return;
      const style = getComputedStyle(shape);
      const paint = style.stroke !== 'none' && parseFloat(style.strokeWidth) > 0 ? style.stroke : style.fill;
      const colour = on(paint, svg);
      const behind = background(svg);
      marks.set([colour, behind].join(), {colour, behind, large: true, words: shape.getAttribute('class') ?? short(shape)});
      if (!shape.matches('.axis') && svg.getAttribute('aria-hidden') !== 'true') {
        const hollow = style.fill === 'none' || on(style.fill, svg).join() === behind.join();
        const look = [shape.localName, style.strokeDasharray, hollow ? 'hollow' : 'filled'].join(' ');
        series.set([colour, look].join(), {name: shape.getAttribute('class') ?? '', colour, look});
      }
    });
    if (series.size) charts.push({title: svg.querySelector('title')?.textContent ?? '', series: [...series.values()]});
  });

  return {faults, counts, links: [...new Set(links)], texts: [...texts.values()], marks: [...marks.values()], charts};
})()
