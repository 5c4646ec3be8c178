// The least cost by trying everything: each piece in turn goes on a board already open or a new one
// of any kind. For a handful of pieces only. Shares nothing with the planner.

export interface TinyBoard {
  readonly length: number;
  readonly price: number;
  readonly limit: number;
}

export function leastCost(
  pieces: readonly number[],
  boards: readonly TinyBoard[],
  kerf: number,
): number | undefined {
  const order = [...pieces].sort((a, b) => b - a);
  let best = Number.POSITIVE_INFINITY;
  const used = boards.map(() => 0);
  const place = (at: number, open: { length: number; pieces: number[] }[], cost: number): void => {
    if (cost >= best) return;
    const piece = order[at];
    if (piece === undefined) {
      best = cost;
      return;
    }
    const fits = (board: { length: number; pieces: number[] }) => {
      const sum = board.pieces.reduce((total, each) => total + each, piece);
      return sum + board.pieces.length * kerf <= board.length;
    };
    for (const board of open.filter(fits)) {
      board.pieces.push(piece);
      place(at + 1, open, cost);
      board.pieces.pop();
    }
    for (const [i, board] of boards.entries()) {
      if ((used[i] ?? 0) >= board.limit || board.length < piece) continue;
      used[i] = (used[i] ?? 0) + 1;
      place(at + 1, [...open, { length: board.length, pieces: [piece] }], cost + board.price);
      used[i] = (used[i] ?? 0) - 1;
    }
  };
  place(0, [], 0);
  return Number.isFinite(best) ? best : undefined;
}
