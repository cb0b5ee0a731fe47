// `npm run verify`: writes docs/verification.md from the checks of published values.
import { mkdirSync, writeFileSync } from "node:fs";
import { allChecks } from "../test/published/all.ts";
import { judge } from "../test/published/check.ts";
import { verificationPage } from "../test/published/report.ts";

const page = new URL("../docs/verification.md", import.meta.url);
mkdirSync(new URL(".", page), { recursive: true });
writeFileSync(page, verificationPage(allChecks));

const failing = allChecks.filter((check) => !judge(check).passes);
for (const { area, says } of failing) console.log(`fails: ${area}: ${says}`);
console.log(`docs/verification.md: ${allChecks.length} checks, ${failing.length} failing`);
process.exitCode = failing.length > 0 ? 1 : 0;
