// The arrows of the house: science <- bench <- store <- server <- cli, bench <- web. npm does not enforce them.
const only = (from, allowed) => ({
  name: `${from}-arrow`,
  severity: "error",
  from: { path: `^packages/${from}/src` },
  to: { path: `^packages/(?!(${[from, ...allowed].join("|")})/)` },
});
module.exports = {
  forbidden: [
    only("science", []),
    only("bench", ["science"]),
    only("store", ["bench"]),
    only("server", ["bench", "store"]),
    only("web", ["bench", "science"]),
    only("cli", ["bench", "store", "server", "science"]),
    {
      name: "science-is-alone",
      severity: "error",
      from: { path: "^packages/science/src", pathNot: "\\.test\\.ts$" },
      to: { dependencyTypes: ["npm", "npm-dev", "core"] },
    },
    {
      name: "bench-is-pure",
      severity: "error",
      from: { path: "^packages/bench/src", pathNot: "\\.test\\.ts$" },
      to: { dependencyTypes: ["core"] },
    },
    {
      name: "crafts-are-islands",
      severity: "error",
      from: { path: "^packages/bench/src/crafts/([^/]+)/" },
      to: { path: "^packages/bench/src/crafts/[^/]+/", pathNot: "^packages/bench/src/crafts/$1/" },
    },
    {
      name: "the-core-knows-no-craft",
      severity: "error",
      from: { path: "^packages/bench/src/(?!crafts/)", pathNot: "\\.test\\.ts$" },
      to: { path: "^packages/bench/src/crafts/[^/]+/" },
    },
    {
      name: "simulator-is-a-second-opinion",
      severity: "error",
      from: { path: "^simulator/src" },
      to: { path: "^packages/" },
    },
    // A circle of types (data here, its sentence there) is gone when the program runs, and one through an import on
    // demand (the table of screens, the screens' way back) is only closed after all its files have been read.
    {
      name: "no-cycles",
      severity: "error",
      from: {},
      to: { circular: true, viaOnly: { dependencyTypesNot: ["type-only", "dynamic-import"] } },
    },
  ],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)dist/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: { exportsFields: ["exports"], conditionNames: ["source", "import", "default"] },
  },
};
