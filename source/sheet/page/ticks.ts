/**
 * Keeps the ticks of the stripes in the page's own storage, where the browser has one to give, and says so; else the page says
 * that they are not kept. The page lets nothing run but this text, which it names by its sum (W3C Content Security Policy).
 */
/** Marks what a browser runs, which is not for the maker to read. */
const script = String.raw;

export const ticksScript = script`(() => {
  const boxes = [...document.querySelectorAll('ol.stripes input')];
  const key = 'ticks of ' + document.body.dataset.keep;
  try {
    const ticked = new Set(JSON.parse(localStorage.getItem(key) || '[]'));
    for (const box of boxes) {
      box.checked = ticked.has(box.id);
      box.addEventListener('change', () => {
        localStorage.setItem(key, JSON.stringify(boxes.filter((one) => one.checked).map((one) => one.id)));
      });
    }
    localStorage.setItem(key, JSON.stringify([...ticked]));
    for (const note of document.querySelectorAll('.ticks')) note.textContent = note.dataset.kept;
  } catch {
    // No storage here: the page says so already.
  }
})();`;

/** SHA-256 of the script, in base64; a test works it out again. */
export const ticksHash = 'sha256-xtMFe0sMcs4rBRKwbAIzYdRcDD8jAdADVcifzGXci0g=';
