import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Extractor, ExtractorConfig, ExtractorLogLevel } from '@microsoft/api-extractor';
import manifest from '../package.json' with { type: 'json' };

// Writes or compares the report of each package entry: a change of the public surface is a change to review in docs/api.
const root = fileURLToPath(new URL('..', import.meta.url));
const update = process.argv.includes('--update');
mkdirSync(`${root}out/api`, { recursive: true });

let changed = false;
for (const [entry, target] of Object.entries(manifest.exports)) {
  if (typeof target === 'string') continue;
  const name = entry === '.' ? 'dashpot' : entry.replace('./', 'dashpot-');
  const config = ExtractorConfig.prepare({
    configObjectFullPath: undefined,
    packageJsonFullPath: `${root}package.json`,
    configObject: {
      projectFolder: root,
      mainEntryPointFilePath: `${root}${target.types.replace('./', '')}`,
      compiler: { tsconfigFilePath: `${root}.config/tsconfig.build.json`, skipLibCheck: true },
      apiReport: {
        enabled: true,
        reportFileName: name,
        reportFolder: `${root}docs/api`,
        reportTempFolder: `${root}out/api`,
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      messages: {
        extractorMessageReporting: {
          default: { logLevel: ExtractorLogLevel.Error, addToApiReportFile: false },
          // Declaration maps lead to the sources; messages are the better for it.
          'ae-wrong-input-file-type': { logLevel: ExtractorLogLevel.None, addToApiReportFile: false },
          // Fields such as `title` speak for themselves; those with a unit must say it.
          'ae-undocumented': { logLevel: ExtractorLogLevel.None, addToApiReportFile: false },
          'ae-unresolved-link': { logLevel: ExtractorLogLevel.None, addToApiReportFile: false },
        },
        tsdocMessageReporting: { default: { logLevel: ExtractorLogLevel.Error, addToApiReportFile: false } },
      },
    },
  });
  const result = Extractor.invoke(config, {
    localBuild: update,
    showVerboseMessages: false,
    // It carries a compiler of its own that is older than ours; that is known and harmless.
    messageCallback: (message) => {
      if (message.messageId === 'console-compiler-version-notice') message.handled = true;
    },
  });
  if (!result.succeeded) changed = true;
}
if (changed) {
  console.error(
    'The public surface differs from docs/api, or an export lacks a tag; see above, then `npm run api -- --update`.',
  );
  process.exit(1);
}
