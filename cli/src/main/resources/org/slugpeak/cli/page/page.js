// Shows what the server sends, as text and never as markup. The words all come from there or stand in the page.
import { path, bounds } from './plot.js';
import { Ear } from './sound.js';

const SECONDS_SHOWN = 60;
const SECONDS_APART = 0.1;
const SMALLEST_WORD = 14;
const LOST_AFTER_MS = 3500;
const AGAIN_AFTER_MS = 1500;
const FLASH_MS = 250;
const FLASHES_APART_MS = 500; // Three flashes a second may do harm (WCAG 2.2, 2.3.1): no more than two.

const at = id => document.getElementById(id);
const ear = new Ear();

let stream = null;
let heardMs = performance.now();
let state = null;
let trace = [];
let waiting = false;
let over = false;
let calls = null;
let flashedMs = -Infinity;

/* ---- the connection ---- */

function listen() {
  if (over) {
    return;
  }
  if (stream) {
    stream.close();
  }
  stream = new EventSource('events');
  on('past', past => { trace = past; });
  on('work', showWork);
  on('state', take);
  on('beat', () => {});
}

function on(kind, what) {
  stream.addEventListener(kind, event => {
    heardMs = performance.now();
    document.body.classList.remove('lost', 'connecting');
    at('lost').hidden = true;
    what(JSON.parse(event.data));
  });
}

function watch() {
  const silentMs = performance.now() - heardMs;
  if (over || document.hidden || silentMs < LOST_AFTER_MS) {
    return;
  }
  if (at('lost').hidden) {
    document.body.classList.add('lost');
    at('lost').hidden = false;
    ear.silence();
    attend('NO_LINK');
  }
  if (silentMs % (2 * AGAIN_AFTER_MS) < AGAIN_AFTER_MS / 2) {
    listen();
  }
}

// A page that nobody sees or hears takes none of the few connections that a browser has for one server.
document.addEventListener('visibilitychange', () => {
  if (!document.hidden) {
    heardMs = performance.now();
    listen();
    stayAwake();
  } else if (!ear.on && stream) {
    stream.close();
  }
});

/* ---- the moment ---- */

function take(next) {
  const before = state;
  state = next;
  const last = trace.length ? trace[trace.length - 1][0] : -Infinity;
  if (!before || next.t !== before.t) {
    if (next.t - last < SECONDS_APART && trace.length > 1) {
      trace[trace.length - 1] = [last, next.value];
    } else {
      trace.push([next.t, next.value]);
    }
    trace = trace.filter(([t]) => next.t - t <= SECONDS_SHOWN && t <= next.t);
  }
  ear.follow(next.tone);
  if (calls !== null && next.calls > calls) {
    attend(next.call);
  }
  calls = next.calls;
  if (!waiting) {
    waiting = true;
    // A hidden page is shown no pictures; it is drawn when it is seen again.
    requestAnimationFrame(draw);
  }
}

function draw() {
  waiting = false;
  for (const id of ['title', 'source', 'alarm', 'warning', 'line', 'digits', 'unit', 'trendWords', 'note']) {
    write(at(id), state[id]);
  }
  write(at('level'), state.facts);
  if (at('panel').dataset.act !== state.act) {
    at('panel').dataset.act = state.act;
    at('sign').firstElementChild.setAttribute('href', '#' + state.act);
    write(at('said'), state.word);
  }
  at('trend').firstElementChild.setAttribute('href', '#' + state.trend);
  at('trend').toggleAttribute('hidden', state.trendWords === '');
  if (write(at('word'), state.word)) {
    fit();
  }
  drawTrace();
  if (state.act === 'END') {
    over = true;
    stream.close();
    ear.silence();
    at('over').hidden = false;
  }
}

function write(element, text) {
  if (element.textContent === text) {
    return false;
  }
  element.textContent = text;
  return true;
}

/** The word as large as its panel allows. */
function fit() {
  const word = at('word');
  const panel = at('panel');
  let size = panel.clientHeight * 0.8;
  do {
    word.style.fontSize = size + 'px';
    size *= 0.92;
  } while (size > SMALLEST_WORD && (word.scrollWidth > word.clientWidth || word.scrollHeight > panel.clientHeight * 0.95));
}

function drawTrace() {
  const values = trace.map(point => point[1]);
  const [low, high] = bounds(state.best === null ? values : [...values, state.best]);
  const plot = at('minute').querySelector('svg');
  const to = state.t;
  const line = (points) => path(points, to - SECONDS_SHOWN, to, low, high);
  plot.querySelector('.trace').setAttribute('d', line(trace));
  plot.querySelector('.best').setAttribute(
      'd', state.best === null ? '' : line([[to - SECONDS_SHOWN, state.best], [to, state.best]]));
}

/* ---- what has come of it ---- */

function showWork(work) {
  const rows = work.adjusters.slice().reverse().map(cells => {
    const row = document.createElement('tr');
    for (const cell of cells) {
      row.appendChild(document.createElement('td')).textContent = cell;
    }
    return row;
  });
  at('adjusters').hidden = rows.length === 0;
  at('adjusters').querySelector('tbody').replaceChildren(...rows);
  const points = work.points.slice().sort((a, b) => a[0] - b[0]);
  at('curve').hidden = points.length === 0;
  if (points.length > 0) {
    const [from, to] = bounds(points.map(point => point[0]));
    const [low, high] = bounds(points.map(point => point[1]));
    at('curve').querySelector('.trace').setAttribute('d', path(points, from, to, low, high));
    at('curve').querySelector('.range').textContent = from.toFixed(2) + '-' + to.toFixed(2) + ' kHz';
  }
}

/* ---- attention: eyes, skin ---- */

// Milliseconds on, off, on ...: each is told from the others by its rhythm alone.
const RHYTHMS = {
  BACK: [120, 80, 120],
  STOP: [500],
  HELD: [120, 80, 120, 80, 400],
  OVERLOAD: [300, 150, 300, 150, 300, 150, 300],
  NO_LINK: [60, 60, 60, 400, 60, 60, 60],
  LINK_BACK: [60],
  LOOK: [250, 250, 250],
  BEGIN: [60, 60, 60],
};
const FLASHES = new Set(['BACK', 'STOP', 'HELD', 'OVERLOAD', 'NO_LINK', 'LOOK']);

function attend(call) {
  if (at('vibration').checked && navigator.vibrate) {
    navigator.vibrate(RHYTHMS[call] || []);
  }
  const nowMs = performance.now();
  if (FLASHES.has(call) && nowMs - flashedMs > FLASHES_APART_MS) {
    flashedMs = nowMs;
    at('flash').classList.add('lit');
    setTimeout(() => at('flash').classList.remove('lit'), FLASH_MS);
  }
}

/* ---- buttons and choices ---- */

for (const button of document.querySelectorAll('#keys button')) {
  button.addEventListener('click', async () => {
    const answer = await fetch('keys', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(button.dataset.key),
    }).catch(() => null);
    const taken = answer !== null && answer.ok;
    at('refused').hidden = taken;
    if (taken) {
      button.classList.add('sent');
      setTimeout(() => button.classList.remove('sent'), FLASH_MS);
    }
  });
}

function remember(box, whatToDo) {
  box.addEventListener('change', () => {
    keep(box);
    whatToDo(box.checked);
  });
  try {
    box.checked = localStorage.getItem(box.id) === 'on';
  } catch (none) {
    box.checked = false;
  }
}

function keep(box) {
  try {
    localStorage.setItem(box.id, box.checked ? 'on' : 'off');
  } catch (none) {
    // Some browsers remember nothing; the choice holds until the page is closed.
  }
}

remember(at('sound'), on => ear.turn(on));
remember(at('vibration'), on => on && attend('LINK_BACK'));
if (!navigator.vibrate) {
  at('vibration').disabled = true;
  at('noVibration').hidden = false;
}
// No browser plays anything before the page was touched.
document.addEventListener('pointerdown', () => {
  if (at('sound').checked && !ear.on) {
    ear.turn(true);
  }
  stayAwake();
});

/* ---- staying awake ---- */

let lock = null;

async function stayAwake() {
  if (lock && !lock.released) {
    return;
  }
  try {
    lock = await navigator.wakeLock.request('screen');
  } catch (refused) {
    lock = null;
  }
  at('awake').hidden = lock === null;
  at('asleep').hidden = lock !== null;
}

window.addEventListener('resize', () => state && fit());
listen();
stayAwake();
setInterval(watch, AGAIN_AFTER_MS / 2);
