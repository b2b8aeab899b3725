// Renders messages as the page does: reads { language, source, cases: [id, args][] }, prints the texts.
import { readFileSync } from "node:fs";
import { FluentBundle, FluentResource } from "@fluent/bundle";

const { language, source, cases } = JSON.parse(readFileSync(0, "utf8"));
const bundle = new FluentBundle(language, { useIsolating: false });
const errors = bundle.addResource(new FluentResource(source));
const texts = cases.map(([id, args]) => {
  const message = bundle.getMessage(id);
  return message?.value ? bundle.formatPattern(message.value, args, errors) : "";
});
if (errors.length > 0) throw errors[0];
process.stdout.write(JSON.stringify(texts));
