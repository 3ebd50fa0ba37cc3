// Small comforts on top of pages that work without them.
document.addEventListener('input', (event) => {
  const field = event.target.closest('[data-filter]');
  if (!field) return;
  const words = field.value.toLowerCase().split(/\s+/).filter(Boolean);
  for (const row of document.querySelectorAll('[data-rows] > *')) {
    const text = row.textContent.toLowerCase();
    row.hidden = !words.every((word) => text.includes(word));
  }
});

// A hand scanner ends with Enter: it ticks the row when only one is left, and never sends the form.
document.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || !event.target.matches('[data-tick]')) return;
  event.preventDefault();
  const left = [...document.querySelectorAll('[data-rows] > *')].filter((row) => !row.hidden);
  if (left.length !== 1) return;
  left[0].querySelector('input[type=checkbox]').checked = true;
  event.target.value = '';
  event.target.dispatchEvent(new Event('input', { bubbles: true }));
});

// After a scanned label the hand goes on to the next field, for example to the length.
document.addEventListener('keydown', (event) => {
  if (event.key !== 'Enter' || !event.target.matches('[data-next]') || !event.target.value) return;
  event.preventDefault();
  document.getElementById(event.target.dataset.next)?.focus();
});

// Where many rows are scanned and measured, Enter goes on to the next field; only the button sends the form.
document.addEventListener('keydown', (event) => {
  const form = event.target.closest('form[data-onward]');
  if (!form || event.key !== 'Enter' || !event.target.matches('input')) return;
  event.preventDefault();
  const fields = [...form.querySelectorAll('input:not([type="hidden"]):not([readonly]), select, button')];
  const next = fields[fields.indexOf(event.target) + 1];
  next?.focus();
  next?.select?.();
});

// A form is sent once: its button says so. The command id in the form is what makes it safe.
document.addEventListener('submit', (event) => {
  if (event.target.method !== 'post') return;
  const button = event.submitter;
  if (button) setTimeout(() => { button.disabled = true; button.classList.add('busy'); });
});
window.addEventListener('pageshow', () => {
  for (const button of document.querySelectorAll('button.busy')) {
    button.disabled = false;
    button.classList.remove('busy');
  }
});

// A page that came back with a question or a refusal begins there.
document.querySelector('.problem')?.focus();

// Standing at a tree, the device knows where; it is asked only when somebody presses the button.
for (const offer of document.querySelectorAll('[data-position]')) {
  if (!('geolocation' in navigator) || !window.isSecureContext) continue;
  offer.hidden = false;
  const says = offer.querySelector('[role=status]');
  offer.querySelector('button').addEventListener('click', () => {
    says.textContent = 'Asking the device …';
    navigator.geolocation.getCurrentPosition((found) => {
      document.getElementById('lat').value = found.coords.latitude.toFixed(6);
      document.getElementById('lon').value = found.coords.longitude.toFixed(6);
      says.textContent = `To about ${Math.ceil(found.coords.accuracy)} m. Stand at the trunk and wait for a better one if that is much.`;
    }, () => {
      says.textContent = 'The device gives no position. Write it, or leave it out.';
    }, { enableHighAccuracy: true, timeout: 20000, maximumAge: 0 });
  });
}

// A wide table becomes one card per row on a phone (cards in parts.css). Each cell carries the name of its column, and the
// roles are said aloud, because a table that is laid out otherwise is no longer one for a screen reader; not where the
// caption holds links, which a table with a role must not.
for (const table of document.querySelectorAll('.scroll > table:not(.short):not(.board)')) {
  const heads = [...table.querySelectorAll('thead tr:last-child > th')];
  if (heads.length < 5 || heads.some((head) => head.colSpan > 1)) continue;
  const names = heads.map((head) => (head.querySelector('.unseen') ? '' : head.textContent.trim()));
  table.classList.add('cards');
  const said = !table.querySelector('caption a');
  if (said) {
    table.setAttribute('role', 'table');
    for (const part of table.querySelectorAll('thead, tbody, tfoot')) part.setAttribute('role', 'rowgroup');
  }
  for (const row of table.rows) {
    if (said) row.setAttribute('role', 'row');
    let column = 0;
    for (const cell of row.cells) {
      const heading = row.parentElement.tagName === 'THEAD';
      if (said) cell.setAttribute('role', heading ? 'columnheader' : cell.tagName === 'TH' ? 'rowheader' : 'cell');
      if (!heading) cell.dataset.label = cell.colSpan > 1 ? '' : names[column] ?? '';
      column += cell.colSpan;
    }
  }
}
