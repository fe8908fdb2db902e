import { Suspense, useEffect, useState, useSyncExternalStore } from "react";
import { Route, Router, Switch, useLocation } from "wouter";
import type { Identity } from "../engine/messages.ts";
import { useEngine } from "../engine/use-ask.ts";
import { Key } from "../parts/key.tsx";
import { onDemand } from "../words/on-demand.ts";
import { useWords } from "../words/words.ts";
import { FirstStart } from "./first-start/first-start.tsx";
import { Frame } from "./frame.tsx";
import { useHashPath, useHashSearch } from "./hash-location.ts";
import { HouseKeys } from "./house-keys.tsx";
import { NewVersion } from "./new-version.tsx";
import { NumberScreen } from "./number/number-screen.tsx";
import { ReadingNote } from "./reading-note.tsx";
import { RoundScreen } from "./round/round-screen.tsx";
import { pages } from "./routes.ts";
import { useSettings } from "./say.ts";
import { ScreenBoundary } from "./screen-boundary.tsx";

// Seen by few and once: not part of the first script.
const PairPage = onDemand(async () => (await import("../pages/people/pair-screen.tsx")).PairPage);
const ClosedPage = onDemand(async () => (await import("../pages/people/closed-page.tsx")).ClosedPage);

/** The whole house: who holds it, then its pages by their path. */
export function App() {
  const engine = useEngine();
  // Words and units may change in place; everything below follows.
  useSettings();
  const [identity, setIdentity] = useState<Identity | null>();
  const [trouble, setTrouble] = useState<Error>();
  useEffect(() => {
    engine.opened.then(({ identity: kept }) => setIdentity(kept), setTrouble);
  }, [engine]);
  const server = useSyncExternalStore(engine.listen, () => engine.mark().server);
  return (
    <ScreenBoundary kept_n={() => engine.mark().away_n}>
      <Router hook={useHashPath} searchHook={useHashSearch}>
        {identity && server === "closed" ? (
          <Suspense fallback={<Opening error={undefined} />}>
            <ClosedPage />
          </Suspense>
        ) : identity ? (
          <Pages />
        ) : identity === null && server === "unpaired" ? (
          <Suspense fallback={<Opening error={undefined} />}>
            <PairPage given={/^#\/pair\/(\d{8})$/.exec(location.hash)?.[1] ?? ""} onPaired={setIdentity} />
          </Suspense>
        ) : identity === null ? (
          <FirstStart onChosen={setIdentity} />
        ) : (
          <Opening error={trouble} />
        )}
      </Router>
    </ScreenBoundary>
  );
}

function Opening({ error }: { readonly error: Error | undefined }) {
  const { shell } = useWords();
  return (
    <main style={{ padding: "var(--s4)" }}>
      <h1 style={{ fontSize: "var(--t-body)" }}>{shell.round}</h1>
      <ReadingNote error={error} />
    </main>
  );
}

function Pages() {
  const engine = useEngine();
  const [path] = useLocation();
  return (
    <>
      <HouseKeys />
      <NewVersion />
      <ScreenBoundary key={path} kept_n={() => engine.mark().away_n}>
        <Suspense fallback={<Coming />}>
          <Switch>
            <Route path="/" component={RoundScreen} />
            {/* With the first script: a scanner's digits do not wait. */}
            <Route path="/number" component={NumberScreen} />
            {pages.map(({ path: at, screen }) => (
              <Route key={at} path={at} component={screen} />
            ))}
            <Route>
              <NoPage />
            </Route>
          </Switch>
        </Suspense>
      </ScreenBoundary>
    </>
  );
}

function Coming() {
  const { shell } = useWords();
  return (
    <Frame where={shell.reading}>
      <ReadingNote />
    </Frame>
  );
}

function NoPage() {
  const { shell } = useWords();
  const [, go] = useLocation();
  return (
    <Frame
      where={shell.nothingHere}
      keys={
        <Key main onPress={() => go("/")}>
          {shell.toTheRound}
        </Key>
      }
    >
      <p className="serif">{shell.nothingHere}</p>
    </Frame>
  );
}
