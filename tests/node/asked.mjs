// Reads {sums, questions} and writes the ids that the page's own search finds for each question, best first.
import fs from "node:fs";
import { search } from "../../site/src/state-search.mjs";

const { sums, questions } = JSON.parse(fs.readFileSync(0, "utf8"));
console.log(JSON.stringify(questions.map((one) => search(sums, one).map(({ id }) => id))));
