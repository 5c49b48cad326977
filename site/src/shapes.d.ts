import type { About, Kept, OnShelf, PieceActs, Settled, Told } from "./shapes-piece";

/** The shapes that cross between Python, the build and the page. Python's side: calc/describe.py, calc/answers.py, calc/door.py. */

export interface Limit {
  low: string;
  high: string;
  above: boolean;
  below: boolean;
  text: string;
}

export interface Given {
  name: string;
  label: string;
  kind: string;
  help: string;
  default: string;
  default_why: string;
  optional: boolean;
  limit: Limit;
  options?: { key: string; label: string }[];
  columns?: Given[];
  unit?: string;
  units?: string[];
  search?: boolean;
}

export interface Cell {
  text: string;
  left: string;
  also: string;
  exact?: boolean;
}

export interface Column {
  name: string;
  label: string;
  kind: string;
}

export interface Answer extends Partial<Cell>, Column {
  help: string;
  columns?: Column[];
  rows?: Cell[][];
}

export interface Line {
  label: string;
  letters: string;
  numbers: string;
  result: string;
  note: string;
}

export interface Caution {
  say: string;
  source: string;
}

export interface Carry {
  to: string;
  why: string;
  givens: Record<string, string>;
}

/** One element of a drawing: [tag, attributes, ...children]. */
export type Node = [string, Record<string, string | number>, ...(Node | string)[]];

export interface Figure {
  width: number;
  height: number;
  title: string;
  desc: string;
  nodes: Node[];
}

export interface Result {
  sum: string;
  givens: Record<string, { typed: string; read: string; unit: string }>;
  answers: Answer[];
  working: Line[];
  cautions: Caution[];
  carry_on: Carry[];
  figure: Figure;
  /** A piece taken apart, where it can be drawn so. */
  exploded?: Figure | null;
}

export interface Source {
  work: string;
  where: string;
  basis: string;
  note: string;
}

/** One sum as declared, with its worked example. */
export interface Sum {
  id: string;
  title: string;
  moment: string;
  question: string;
  asks: string[];
  purpose: string;
  limits_of: string;
  givens: Given[];
  answers?: (Column & { help: string; part?: string; can_be_cut?: boolean })[];
  any_of: { count: number; names: string[] } | null;
  sources: Source[];
  cautions: Caution[];
  example: { givens: Record<string, string>; story: string };
  worked: Result;
}

export interface Listed {
  id: string;
  title: string;
  moment: string;
  question: string;
  asks: string[];
  purpose: string;
  data: string;
}

export interface Catalogue {
  version: string;
  moments: { id: string; title: string }[];
  sums: Listed[];
}

export interface Bench {
  unit: string;
  mark: string;
  angles: string;
  currency: string;
}

export interface Request {
  op: "answer";
  sum: string;
  givens: Record<string, string>;
  bench: Bench;
}

export interface Refusal {
  field: string;
  label: string;
  say: string;
  instead: string;
  source: string;
  text: string;
}

export interface Reply {
  ok: boolean;
  /** The rest of the answer follows. */
  more?: boolean;
  answer?: Result;
  refusals?: Refusal[];
  givens?: Result["givens"];
  fault?: string;
}

/** `sooner` is told what is known before the whole reply is. */
export type Ask = (request: Request, sooner?: (part: Reply) => void) => Promise<Reply>;

/** What stands in a sum's fields. `order`: names, last typed last. `origin`: where a text that nobody typed here came from. */
export interface Entry {
  texts: Record<string, string>;
  order: string[];
  origin: Record<string, string>;
  undo: { label: string; texts: Record<string, string>; order: string[]; origin: Record<string, string> } | null;
}

/** The answer on the page and the request it answers. `kept`: from an earlier visit and not yet worked out again. */
export interface Shown {
  key: string;
  answer: Result;
  kept: boolean;
}

export interface Recent {
  id: string;
  label: string;
  text: string;
}

export interface Offline {
  whole: boolean;
  fetching: { done: number; total: number } | null;
  update: boolean;
  problem: string;
}

export interface State {
  page: string;
  catalogue: Catalogue;
  sum: Sum | null;
  entry: Entry;
  shown: Shown | null;
  /** How each entry was read, and the question that was asked with them. */
  readings: { key: string; givens: Record<string, { read: string }> };
  refusals: Refusal[];
  fault: string;
  focus: string;
  spoken: string;
  bench: Bench;
  look: string;
  search: string;
  recent: Recent[];
  keeps: boolean;
  wide: boolean;
  python: string;
  said: string;
  offline: Offline;
  /** The piece that is being built; null on a page that has none. */
  kept: Kept | null;
  settled: { key: string; told: Settled | null } | null;
  changed: Told | null;
  pieces: OnShelf[];
  /** What is to be said of the piece as a whole, and the one that was deleted last. */
  notice: string;
  removed: string;
  about: About | null;
}

/** What a view may ask for. */
export interface Acts {
  type(name: string, text: string): void;
  /** The same from a field in which the text stands already, and on which nothing else hangs: drawn with its answer. */
  write(name: string, text: string): void;
  hold(name: string): void;
  release(): void;
  press(key: Key): void;
  clear(): void;
  example(): void;
  undo(): void;
  reuse(name: string): void;
  settle(change: Partial<Bench>): void;
  dress(look: string): void;
  seek(text: string): void;
  touch(name: string): void;
  renew(): void;
  piece: PieceActs;
}

/** One key of our own row: `mark` adds that part of an inch, `text` is typed as it stands, `act` does something else. */
export interface Key {
  label: string;
  name: string;
  mark?: number;
  text?: string;
  act?: "rub" | "next";
}
