import type { PlanShown, PlantTrim, TrimAsk, TrimPage } from "@sillwood/bench/crafts/trimming";
import type { Working } from "@sillwood/bench/working";
import { useEffect, useState } from "react";
import { useLocation, useParams } from "wouter";
import { useEngine } from "../../engine/use-ask.ts";
import { Choices } from "../../pages/fields/choices.tsx";
import pages from "../../pages/pages.module.css";
import { Key, KeyRow } from "../../parts/key.tsx";
import { Care } from "../../parts/ledger.tsx";
import { useSlip } from "../../parts/use-slip.ts";
import { WorkingSlip } from "../../parts/working-slip.tsx";
import { Frame } from "../../shell/frame.tsx";
import { useKeys } from "../../shell/keyboard.ts";
import { sayLast, write } from "../../shell/last-line.ts";
import { ReadingNote } from "../../shell/reading-note.tsx";
import { AimKeys } from "./aim-keys.tsx";
import { CutLines } from "./cut-lines.tsx";
import { PlantView } from "./plant-view.tsx";
import styles from "./trim.module.css";
import { useTrim, useTrimWords } from "./use-trim.ts";
import { Weeks } from "./weeks.tsx";

/** A search goes on in helpings, so that keys answer between them. */
const HELPING_n = 240;
const MOST_n = 7200;

/** Screen 6: if I cut here, what comes? */
export function TrimScreen() {
  const { plant = "" } = useParams<{ plant: string }>();
  const words = useTrimWords();
  const [tries_n, setTries] = useState(HELPING_n);
  const [aim, setAim] = useState<TrimAsk["aim"]>();
  const [node, setNode] = useState<string>();
  const [own, setOwn] = useState<readonly string[]>([]);
  const { page, refused, error, isMissing } = useTrim({
    plant,
    tries_n,
    ...(aim ? { aim } : {}),
    ...(node === undefined ? {} : { node }),
    ...(own.length > 0 ? { own } : {}),
  });
  const [stopped, setStopped] = useState(false);
  const plans = page?.plant?.plans;
  useEffect(() => {
    if (!plans || plans.isDone || stopped || tries_n >= MOST_n || plans.tried_n < tries_n) return undefined;
    const next = setTimeout(() => setTries(tries_n + HELPING_n), 20);
    return () => clearTimeout(next);
  }, [plans, tries_n, stopped]);
  if (!page?.plant)
    return (
      <Frame where={words.title}>
        {isMissing && <p className="serif">{words.noPage}</p>}
        {refused !== undefined && <p role="alert">{words.refused(refused)}</p>}
        {page && <p className="serif">{words.noSuchPlant}</p>}
        {!page && !isMissing && refused === undefined && <ReadingNote error={error} />}
      </Frame>
    );
  if (page.plant.level !== "traced") return <Untraced page={page} trim={page.plant} />;
  const isSearching = plans !== undefined && !plans.isDone && !stopped && tries_n < MOST_n;
  return (
    <Traced
      key={plant}
      page={page}
      trim={page.plant}
      isSearching={isSearching}
      onStop={() => setStopped(true)}
      node={node}
      onNode={setNode}
      own={own}
      onOwn={setOwn}
      isAimChanged={aim !== undefined}
      onAim={(next) => {
        setAim(next);
        setStopped(false);
        setTries(HELPING_n);
      }}
    />
  );
}

function Untraced({ page, trim }: { readonly page: TrimPage; readonly trim: PlantTrim }) {
  const words = useTrimWords();
  const [, go] = useLocation();
  return (
    <Frame
      where={words.titleOf(trim.number)}
      beside={trim.kind}
      keys={
        <>
          <KeyRow>
            <Key onPress={() => go(`/craft/trim/${trim.plant}/sketch`)}>{words.sketch}</Key>
          </KeyRow>
          <Key main onPress={() => go(`/craft/trim/${trim.plant}/trace`)}>
            {words.start}
          </Key>
        </>
      }
    >
      <p className="serif">{trim.levelSaid}</p>
      {trim.sketch && <p>{trim.sketch.said}</p>}
      {trim.sketch?.shares.map((said) => (
        <p key={said}>{said}</p>
      ))}
      {trim.held.map((said) => (
        <p key={said}>{said}</p>
      ))}
      <Cares page={page} />
    </Frame>
  );
}

function Cares({ page }: { readonly page: TrimPage }) {
  const words = useTrimWords();
  const [first, ...rest] = page.cautions;
  return (
    <>
      {first !== undefined && <Care word="">{first}</Care>}
      <details>
        <summary>{words.cares}</summary>
        {rest.map((said) => (
          <p key={said}>{said}</p>
        ))}
      </details>
    </>
  );
}

interface TracedProps {
  readonly page: TrimPage;
  readonly trim: PlantTrim;
  readonly isSearching: boolean;
  readonly onStop: () => void;
  readonly node: string | undefined;
  readonly onNode: (node: string | undefined) => void;
  readonly own: readonly string[];
  readonly onOwn: (own: readonly string[]) => void;
  readonly isAimChanged: boolean;
  readonly onAim: (aim: TrimAsk["aim"]) => void;
}

function Traced({
  page,
  trim,
  isSearching,
  onStop,
  node,
  onNode,
  own,
  onOwn,
  isAimChanged,
  onAim,
}: TracedProps) {
  const words = useTrimWords();
  const engine = useEngine();
  const [, go] = useLocation();
  const slip = useSlip();
  const [working, setWorking] = useState<Working>();
  const [which, setWhich] = useState<"front" | "side">("front");
  const [chosen, setChosen] = useState<PlanShown["key"]>("middle");
  const [week, setWeek] = useState(0);
  const [isOther, setOther] = useState(false);
  const plans = trim.plans?.plans ?? [];
  const plan =
    plans.find(({ key }) => key === (own.length > 0 ? "own" : chosen)) ??
    plans.find(({ key }) => key !== "nothing") ??
    plans[0];
  const legal = trim.nodes.filter(({ isLegal }) => isLegal);
  const step = (by: number) => {
    const at = legal.findIndex(({ id }) => id === node);
    const next = legal[(at + by + legal.length) % legal.length];
    setOther(true);
    if (next) onNode(next.id);
  };
  const toggle = (id: string) => onOwn(own.includes(id) ? own.filter((each) => each !== id) : [...own, id]);
  useKeys({
    arrowright: () => step(1),
    arrowdown: () => step(1),
    arrowleft: () => step(-1),
    arrowup: () => step(-1),
    x: () => node !== undefined && toggle(node),
    n: () => {
      onOwn([]);
      setChosen("nothing");
    },
  });
  const open = (next: Working) => {
    setWorking(next);
    slip.open();
  };
  const keep = async () => {
    if (!plan?.draft) {
      sayLast({ text: words.left });
      return;
    }
    const written = await write(engine, [plan.draft]);
    if ("kept" in written) go(`/craft/trim/${trim.plant}/cuts`);
  };
  if (!plan || !trim.views) return <Frame where={words.titleOf(trim.number)}>{null}</Frame>;
  const shownWeek = plan.weeks.find((each) => each.week === week);
  const both = (["front", "side"] as const).filter((each) => each === which || window.innerWidth >= 1024);
  return (
    <Frame
      where={words.titleOf(trim.number)}
      beside={trim.kind}
      page={trim.plant}
      keys={
        <>
          {isSearching && (
            <KeyRow>
              <Key onPress={onStop}>{words.take}</Key>
              <Key onPress={onStop}>{words.stop}</Key>
            </KeyRow>
          )}
          <KeyRow>
            <Key pressed={isOther} onPress={() => setOther(!isOther)}>
              {isOther ? words.plans : words.other}
            </Key>
            <Key onPress={() => go(`/craft/trim/${trim.plant}/print/${plan.key}`)}>{words.print}</Key>
          </KeyRow>
          <Key main onPress={() => void keep()}>
            {plan.draft ? words.keep : words.keepNothing}
          </Key>
        </>
      }
    >
      {trim.held.map((said) => (
        <p key={said} role="note">
          <strong>{said}</strong>
        </p>
      ))}
      <Choices
        quiet
        legend={words.which}
        options={[
          { value: "front", said: words.front },
          { value: "side", said: words.side },
        ]}
        value={which}
        onChoose={setWhich}
      />
      <div className={styles["both"]}>
        {both.map((each) => (
          <PlantView
            key={each}
            view={trim.views?.[each] as never}
            which={each}
            plan={plan}
            week={shownWeek}
            chosen={isOther ? node : undefined}
            onNode={(id) => {
              setOther(true);
              onNode(id);
            }}
          />
        ))}
      </div>
      {isOther ? (
        <section className={pages["part"]}>
          {trim.node && (
            <>
              <CutLines cut={trim.node} onWorking={open} />
              {trim.node.isLegal && (
                <Key pressed={own.includes(trim.node.gone)} onPress={() => toggle(trim.node?.gone ?? "")}>
                  {own.includes(trim.node.gone) ? words.unmark : words.mark}
                </Key>
              )}
            </>
          )}
          <h2>{words.joints}</h2>
          <div className={styles["joints"]}>
            {trim.nodes.slice(1).map(({ id, name }) => (
              <Key key={id} pressed={id === node} onPress={() => onNode(id)}>
                {name}
              </Key>
            ))}
          </div>
        </section>
      ) : (
        <>
          <Choices
            quiet
            legend={words.plan}
            options={plans.map(({ key, name }) => ({ value: key, said: name }))}
            value={plan.key}
            onChoose={(key) => {
              if (key !== "own") onOwn([]);
              setChosen(key);
            }}
          />
          <p className={pages["lead"]}>
            <strong>{plan.said}</strong>. {plan.beats}
          </p>
          {plan.warning !== undefined && (
            <p role="note">
              <strong>{plan.warning}</strong>
            </p>
          )}
          {plan.cuts.map((cut) => (
            <CutLines key={cut.gone} cut={cut} onWorking={open} />
          ))}
          {plan.pluck.length > 0 && (
            <p>
              {words.pluck}: {plan.pluck.join(", ")}
            </p>
          )}
          <Weeks plan={plan} week={week} onWeek={setWeek} />
          {isSearching || trim.plans?.said ? (
            <p className={styles["note"]} role="status">
              {trim.plans?.said}
            </p>
          ) : null}
          {trim.aim && (
            <AimKeys
              plant={trim.plant}
              aimed={trim.aim.aimed}
              said={trim.aim.said}
              origin={trim.aim.origin}
              isChanged={isAimChanged}
              onAim={onAim}
            />
          )}
          <p>{trim.levelSaid}</p>
          <p>{trim.proportions}</p>
          <Key onPress={() => go(`/craft/trim/${trim.plant}/trace`)}>{words.traceAgain}</Key>
          <Cares page={page} />
        </>
      )}
      <WorkingSlip slip={slip} working={working} onChange={() => go("/settings/assumed")} />
    </Frame>
  );
}
