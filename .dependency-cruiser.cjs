// Imports run one way: adapters → src/index.ts → bot → commands → reading, render, engine, answer, store port
// → catalogue types → units. `tests/boundaries/` runs these rules over the tree, and over a small tree that breaks
// each of them once, so that a rule which can no longer fail is found.

/** A layer's files may import the listed places inside `src` and `adapters`, and nothing else there. */
const sees = (name, layer, allowed) => ({
  name,
  severity: 'error',
  comment: `${layer} sees only: ${allowed.join(', ')}`,
  from: { path: layer },
  to: { path: '^(src|adapters|tests|deploy)/', pathNot: [layer, ...allowed] },
});

const types = '^src/catalogue/(heat-)?types\\.ts$';
/** How names are folded and compared: pure, and the same for those who index them and those who look them up. */
const names = '^src/catalogue/names\\.ts$';
const units = '^src/units/';
const answer = '^src/answer/';
const engine = '^src/engine/';
const reading = '^src/reading/';
const render = '^src/render/';
const port = '^src/store/port\\.ts$';
const commands = '^src/commands/';
const pure = '^src/(units|engine|answer|reading|commands)/';

/** An npm package, found or not. */
const pkg = (...names) => `(^|node_modules/)(${names.join('|')})(/|$)`;
const core = (...names) => `^(node:)?(${names.join('|')})(/|$)`;

/** @type {import('dependency-cruiser').IConfiguration} */
module.exports = {
  forbidden: [
    sees('units-see-nothing', units, []),
    sees('answer-sees-units', answer, [units]),
    sees('catalogue-sees-units', '^src/catalogue/', [units]),
    sees('engine-sees-types-and-units', engine, [types, units]),
    sees('render-sees-answer-and-units', render, [answer, units]),
    sees('store-sees-types', '^src/store/', [engine, answer, types, units]),
    sees('reading-sees-engine-and-answer', reading, [engine, answer, types, names, units]),
    sees('commands-see-what-is-below', commands, [reading, render, engine, answer, port, types, units]),
    sees('bot-sees-commands-and-below', '^src/bot/', [commands, reading, render, engine, answer, port, types, units]),
    sees('index-sees-src', '^src/index\\.ts$', ['^src/']),
    {
      name: 'adapters-use-the-one-door',
      severity: 'error',
      comment: 'An adapter imports src only through src/index.ts, and never tests or deploy',
      from: { path: '^adapters/' },
      to: { path: '^(src|tests|deploy)/', pathNot: '^src/index\\.ts$' },
    },
    {
      name: 'adapters-keep-apart',
      severity: 'error',
      comment: 'An adapter imports no other adapter; only run.ts knows them all',
      from: { path: '^adapters/([^/]+)/' },
      to: { path: '^adapters/[^/]+/|^adapters/run\\.ts$', pathNot: '^adapters/$1/' },
    },
    {
      name: 'only-run-knows-all',
      severity: 'error',
      from: { path: '^adapters/[^/]+\\.ts$', pathNot: '^adapters/run\\.ts$' },
      to: { path: '^adapters/[^/]+/' },
    },
    {
      name: 'discord-in-its-adapter',
      severity: 'error',
      from: { pathNot: '^(adapters/discord|tests/discord)/' },
      to: { path: pkg('discord\\.js', '@discordjs', 'discord-api-types') },
    },
    {
      name: 'matrix-in-its-adapter',
      severity: 'error',
      from: { pathNot: '^(adapters/matrix|tests/matrix)/' },
      to: { path: pkg('matrix-js-sdk', '@matrix-org') },
    },
    {
      name: 'files-in-catalogue-and-store',
      severity: 'error',
      comment: 'Inside src only the catalogue and the store touch the file system, and nobody the network or a shell',
      from: { path: '^src/', pathNot: '^src/(catalogue|store)/' },
      to: { path: core('fs', 'sqlite', 'net', 'http', 'https', 'http2', 'tls', 'dgram', 'dns', 'child_process') },
    },
    {
      name: 'pure-without-platform',
      severity: 'error',
      comment: 'What calculates, reads and words an answer asks nothing of the platform',
      from: { path: pure },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'engine-and-units-without-packages',
      severity: 'error',
      comment: 'No schema library, no calculator: formulas and their constants only',
      from: { path: '^src/(units|engine)/' },
      to: { dependencyTypes: ['npm', 'npm-dev', 'npm-optional', 'npm-peer', 'npm-no-pkg', 'npm-unknown'] },
    },
    {
      name: 'logger-in-adapters',
      severity: 'error',
      comment: "The core has a log port; which logger stands behind it is the host's choice",
      from: { pathNot: '^(adapters|tests)/' },
      to: { path: pkg('pino') },
    },
    {
      name: 'production-without-dev-packages',
      severity: 'error',
      from: { path: '^(src|adapters)/' },
      to: { dependencyTypes: ['npm-dev', 'npm-no-pkg', 'npm-unknown'], dependencyTypesNot: ['type-only'] },
    },
    {
      name: 'src-has-these-layers',
      severity: 'error',
      comment: 'A new folder in src needs its own line above',
      from: {
        path: '^src/',
        pathNot: '^src/(units|answer|catalogue|engine|render|store|reading|commands|bot)/|^src/index\\.ts$',
      },
      to: {},
    },
    { name: 'no-cycle', severity: 'error', from: {}, to: { circular: true } },
    { name: 'no-unresolved', severity: 'error', from: {}, to: { couldNotResolve: true } },
    {
      name: 'no-orphan',
      severity: 'error',
      from: { orphan: true, pathNot: '\\.(test|config)\\.ts$|\\.d\\.ts$' },
      to: {},
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^tests/boundaries/canary/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['import', 'node', 'default', 'types'] },
  },
};
