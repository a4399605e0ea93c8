// Lines of equal value on a grid (marching squares), joined into paths.

/** @typedef {[number, number]} Spot column and row, fractional */

/**
 * @param {(number|null)[][]} grid rows of values; null where there is none
 * @param {number} level
 * @returns {Spot[][]} paths
 */
export function contours(grid, level) {
  /** @type {[Spot, Spot][]} */
  const pieces = [];
  for (let row = 0; row + 1 < grid.length; row++) {
    for (let column = 0; column + 1 < grid[row].length; column++) {
      cell(grid, level, column, row, pieces);
    }
  }
  return join(pieces);
}

/**
 * @param {(number|null)[][]} grid @param {number} level @param {number} column @param {number} row
 * @param {[Spot, Spot][]} pieces
 */
function cell(grid, level, column, row, pieces) {
  const a = grid[row][column];
  const b = grid[row][column + 1];
  const c = grid[row + 1][column + 1];
  const d = grid[row + 1][column];
  if (a === null || b === null || c === null || d === null) {
    return;
  }
  const cut = (/** @type {number} */ from, /** @type {number} */ to) => (level - from) / (to - from);
  /** @type {Spot[]} */
  const cuts = [];
  if (a < level !== b < level) {
    cuts.push([column + cut(a, b), row]);
  }
  if (b < level !== c < level) {
    cuts.push([column + 1, row + cut(b, c)]);
  }
  if (d < level !== c < level) {
    cuts.push([column + cut(d, c), row + 1]);
  }
  if (a < level !== d < level) {
    cuts.push([column, row + cut(a, d)]);
  }
  if (cuts.length === 2) {
    pieces.push([cuts[0], cuts[1]]);
  } else if (cuts.length === 4) {
    const middle = (a + b + c + d) / 4 < level;
    const pairs = middle === a < level ? [[0, 1], [2, 3]] : [[0, 3], [1, 2]];
    for (const [i, j] of pairs) {
      pieces.push([cuts[i], cuts[j]]);
    }
  }
}

/** @param {[Spot, Spot][]} pieces @returns {Spot[][]} */
function join(pieces) {
  const name = (/** @type {Spot} */ spot) => `${spot[0].toFixed(4)},${spot[1].toFixed(4)}`;
  /** @type {Map<string, Set<[Spot, Spot]>>} */
  const at = new Map();
  for (const piece of pieces) {
    for (const end of piece) {
      const here = at.get(name(end)) ?? new Set();
      here.add(piece);
      at.set(name(end), here);
    }
  }
  const left = new Set(pieces);
  const paths = [];
  for (const first of pieces) {
    if (!left.delete(first)) {
      continue;
    }
    const path = [first[0], first[1]];
    for (const forward of [true, false]) {
      for (;;) {
        const end = forward ? path[path.length - 1] : path[0];
        const next = [...(at.get(name(end)) ?? [])].find((piece) => left.has(piece));
        if (!next) {
          break;
        }
        left.delete(next);
        const other = name(next[0]) === name(end) ? next[1] : next[0];
        if (forward) {
          path.push(other);
        } else {
          path.unshift(other);
        }
      }
    }
    paths.push(path);
  }
  return paths;
}
