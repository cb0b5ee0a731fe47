/** Names, and attributes in either quotes without < or a bare &. */
const OPEN = /^<([A-Za-z][\w.-]*)((?:\s+[A-Za-z][\w:.-]*="[^"<]*")*)\s*(\/?)>/;
const CLOSE = /^<\/([A-Za-z][\w.-]*)\s*>/;
const BARE = /&(?!(?:amp|lt|gt|quot|#39);)/;

/** What makes a text no well-formed XML, of the plain kind that is written here; none in a sound one. */
export function markupFaults(text: string): readonly string[] {
  let rest = text.replace(/^<\?xml[^?]*\?>\s*/, "").trim();
  const open: string[] = [];
  const faults: string[] = [];
  let roots = 0;
  while (rest !== "") {
    const opened = OPEN.exec(rest);
    const closed = CLOSE.exec(rest);
    if (opened) {
      const [whole, name = "", attributes = "", isEmpty] = opened;
      if (BARE.test(attributes)) faults.push(`a bare & in ${whole}`);
      const names = [...attributes.matchAll(/([\w:.-]+)="/g)].map(([, one]) => one);
      if (new Set(names).size < names.length) faults.push(`an attribute twice in ${whole}`);
      if (open.length === 0) roots += 1;
      if (isEmpty === "") open.push(name);
      rest = rest.slice(whole.length);
    } else if (closed) {
      const [whole, name] = closed;
      const expected = open.pop();
      if (expected !== name) return [...faults, `</${name}> where </${expected}> should be`];
      rest = rest.slice(whole.length);
    } else {
      const content = /^[^<]+/.exec(rest)?.[0];
      if (content === undefined) return [...faults, `no markup: ${rest.slice(0, 40)}`];
      if (BARE.test(content)) faults.push(`a bare & in ${content.slice(0, 40)}`);
      if (open.length === 0 && content.trim() !== "") faults.push("text outside the root");
      rest = rest.slice(content.length);
    }
  }
  if (open.length > 0) faults.push(`${open.join(", ")} left open`);
  return roots === 1 ? faults : [...faults, `${roots} roots`];
}
