// Draws lines in a box of 600 by 200, whatever its size on the screen.
const WIDTH = 600;
const HEIGHT = 200;
const RIM = 12;

/** A path through points [x, y]; null as y leaves a gap. */
export function path(points, x0, x1, y0, y1) {
  let pen = 'M';
  let drawn = '';
  for (const [x, y] of points) {
    if (y === null) {
      pen = 'M';
      continue;
    }
    drawn += pen + across(x, x0, x1).toFixed(1) + ' ' + up(y, y0, y1).toFixed(1);
    pen = 'L';
  }
  return drawn;
}

function across(x, x0, x1) {
  return x1 > x0 ? (x - x0) / (x1 - x0) * WIDTH : WIDTH / 2;
}

function up(y, y0, y1) {
  return HEIGHT - RIM - (y1 > y0 ? (y - y0) / (y1 - y0) : 0.5) * (HEIGHT - 2 * RIM);
}

export function bounds(values) {
  let low = Infinity;
  let high = -Infinity;
  for (const value of values) {
    if (value !== null) {
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
  }
  return [low, high];
}
