/**
 * From what waits to what the door is asked, and from its reply to the piece as it stands then.
 * @typedef {import("./shapes").Sum} Sum
 * @typedef {import("./shapes-piece").Kept} Kept
 * @typedef {import("./shapes-piece").Did} Did
 * @typedef {import("./shapes-piece").Do} Do
 * @typedef {import("./shapes-piece").Pending} Pending
 * @typedef {import("./shapes-piece").PieceReply} PieceReply
 */

import { plainRows } from "./state-rows.mjs";

const UNDECIDED = "?";

/** The last word on each given that has one. @param {Did[]} entries @returns {Map<string, Did>} */
export function givenIn(entries) {
  const found = new Map();
  for (const one of entries.filter(({ act }) => act === "give")) {
    found.delete(one.name);
    if (one.text.trim()) found.set(one.name, one);
  }
  return found;
}

/** How many entries the last step took; 0 when there is nothing to undo. @param {Kept} kept */
export function lastStep({ record: { entries }, steps, floor }) {
  const before = steps.at(-1) ?? Math.max(floor, entries.length - 1);
  return Math.max(0, entries.length - before);
}

/** The entries that a pending one is put on: those before the same hold of the field began, or all.
 * @param {Kept} kept @param {Pending | undefined} next @returns {Did[]} */
export function base(kept, next) {
  return next && isSameHold(kept, next) ? kept.record.entries.slice(0, kept.steps.at(-1)) : kept.record.entries;
}

/** What the door is to do. @param {Kept} kept @param {Pending | undefined} next @param {Sum} sum @returns {Do[]} */
export function acts(kept, next, sum) {
  if (!next || next.act === "settle") return [];
  const entries = base(kept, next);
  const given = givenIn(entries);
  if (next.act === "undo") return Array.from({ length: lastStep(kept) }, () => ({ act: "undo", name: "", text: "" }));
  if (next.act === "clear") return [...given.keys()].map(cleared);
  if (next.act === "example") return wholeExample(given, sum);
  if (next.act === "all") return (next.all ?? []).map(([name, text]) => ({ act: "cut", name, text }));
  if (next.act !== "give") return [{ act: next.act, name: next.name, text: next.text }];
  const text = plain(next, sum);
  return text === (given.get(next.name)?.text ?? "") ? [] : [...madeRoom(given, next.name, text, sum), { act: "give", name: next.name, text }];
}

/** The piece once Python has taken up `next`. @param {Kept} kept @param {Pending} next @param {PieceReply} reply
 * @param {Sum} sum @returns {Kept} */
export function taken(kept, next, reply, sum) {
  const pending = kept.pending.filter((one) => one !== next);
  if (!reply.ok || !reply.record) return { ...kept, pending, drafts: refused(kept, next) };
  const drafts = stillTyped(kept, next, sum);
  const [old, made] = [base(kept, next).length, reply.record.entries.length];
  const before = isSameHold(kept, next) ? kept.steps.slice(0, -1) : kept.steps;
  const steps = made > old ? [...before, old] : before.filter((step) => step < made);
  const lent = next.act === "example" ? [...givenIn(reply.record.entries).keys()] : kept.lent;
  const record = { ...reply.record, title: kept.record.title };
  return { ...kept, pending, drafts, record, steps, lent: lent.filter((name) => isStill(name, record.entries)), hold: made > old ? next.hold : "" };
}

/** What undoing would undo, in words; "" when there is nothing. @param {Kept} kept @param {(name: string) => string} label */
export function undoing(kept, label) {
  const count = lastStep(kept);
  const last = kept.record.entries.at(-1);
  if (!count || !last) return "";
  const step = kept.record.entries.slice(-count);
  if (step.every(({ act, text }) => act === "give" && !text)) return count > 1 ? "clearing" : `${label(last.name)} cleared`;
  if (count > 1 && step.every(({ act }) => act === "cut")) return `${count} sizes cut as drawn`;
  if (count > 1 && step.every(({ act, text }) => act === "give" && text)) return "the example’s sizes";
  const shown = last.text.replace(/(\.\d{2})\d+/, "$1").replace(/^(.{40}).+$/s, "$1…");
  const words = { give: shown || "cleared", cut: `cut, ${shown}`, uncut: "to be made again", first: "came first" };
  return `${label(last.name)} ${words[last.act]}`;
}

/** @param {Kept} kept @param {Pending} next */
function isSameHold(kept, next) {
  return next.act === "give" && next.hold !== "" && next.hold === kept.hold && kept.steps.length > 0;
}

/** @param {string} name @returns {Do} */
function cleared(name) {
  return { act: "give", name, text: "" };
}

/** Of "any two of" the one typed longest ago makes room. @param {Map<string, Did>} given @param {string} name @param {string} text @param {Sum} sum */
function madeRoom(given, name, text, sum) {
  const { names, count } = sum.any_of ?? { names: [], count: 0 };
  if (!names.includes(name) || !text || text === UNDECIDED) return [];
  const others = [...given.values()].filter((one) => names.includes(one.name) && one.name !== name && one.text !== UNDECIDED);
  return others.slice(0, Math.max(0, others.length - count + 1)).map((one) => cleared(one.name));
}

/** @param {Map<string, Did>} given @param {Sum} sum @returns {Do[]} */
function wholeExample(given, sum) {
  const example = Object.entries(sum.example.givens);
  const over = [...given.keys()].filter((name) => !(name in sum.example.givens));
  return [...over.map(cleared), ...example.map(([name, text]) => ({ act: "give", name, text }))];
}

/** @param {Pending} next @param {Sum} sum */
function plain(next, sum) {
  const rows = sum.givens.some(({ name, kind }) => name === next.name && kind === "rows");
  return rows ? plainRows(next.text) : next.text.trim();
}

/** @param {Kept} kept @param {Pending} next */
function refused({ drafts }, next) {
  if (next.act === "give") return { ...drafts, [next.name]: next.text };
  return next.act === "cut" ? { ...drafts, [`cut:${next.name}`]: next.text } : drafts;
}

/** The texts that stay in their fields as they were typed: the one just taken up, down to its last space; none that was undone.
 * @param {Kept} kept @param {Pending} next @param {Sum} sum */
function stillTyped(kept, next, sum) {
  const raw = next.act === "give" && next.text !== plain(next, sum) ? { [next.name]: next.text } : {};
  const over = next.act === "undo" ? kept.record.entries.slice(-lastStep(kept)).map((one) => one.name) : [next.name];
  const all = next.act === "clear" || next.act === "example";
  const stays = Object.entries(kept.drafts).filter(([name]) => name.startsWith("cut:") || !(all || over.includes(name)));
  return { ...Object.fromEntries(stays), ...raw };
}

/** @param {string} name @param {Did[]} entries */
function isStill(name, entries) {
  return givenIn(entries).has(name);
}
