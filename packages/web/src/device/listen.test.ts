import { expect, test } from "vitest";
import { canListen, listen, type Recogniser, type RecogniserMaker } from "./listen.ts";

/** A recogniser that hears what a test says; every one made is kept. */
function fakeMaker(answer: string | Error = "available") {
  const made: FakeRecogniser[] = [];
  class FakeRecogniser implements Recogniser {
    lang = "";
    continuous = false;
    interimResults = true;
    onresult: Recogniser["onresult"] = null;
    onerror: Recogniser["onerror"] = null;
    onend: Recogniser["onend"] = null;
    starts_n = 0;
    isLocal = false;
    static async available(wanted: { readonly processLocally: boolean }): Promise<string> {
      if (!wanted.processLocally) return "available";
      if (answer instanceof Error) throw answer;
      return answer;
    }
    get processLocally() {
      return this.isLocal;
    }
    set processLocally(value: boolean) {
      this.isLocal = value;
    }
    constructor() {
      made.push(this);
    }
    start() {
      this.starts_n++;
    }
    abort() {
      this.onend?.();
    }
    hear(transcript: string, isFinal = true) {
      this.onresult?.({ resultIndex: 0, results: [{ isFinal, 0: { transcript } }] });
    }
  }
  return { maker: FakeRecogniser as RecogniserMaker, made };
}

/** A device with a microphone and a memory of its own. */
function deviceWith(mic = true) {
  const kept = new Map<string, string>();
  return {
    hasMicrophone: async () => mic,
    browser: "Browser 1.0 (test)",
    memory: {
      getItem: (key: string) => kept.get(key) ?? null,
      setItem: (key: string, value: string) => void kept.set(key, value),
      removeItem: (key: string) => void kept.delete(key),
    },
  };
}

test("a browser whose page crashed twice while it was asked is asked no more; a newer one is", async () => {
  const device = deviceWith();
  let asked_n = 0;
  class Crashing {
    static available(): Promise<string> {
      asked_n++;
      return new Promise(() => undefined);
    }
    get processLocally() {
      return true;
    }
  }
  const maker = Crashing as unknown as RecogniserMaker;
  for (let visit = 0; visit < 4; visit++) {
    void canListen(maker, "en", device);
    await new Promise((resolve) => setTimeout(resolve, 0));
  }
  expect(asked_n).toBe(2);
  expect(await canListen(fakeMaker().maker, "en", device)).toBe(false);
  const newer = { ...device, browser: "Browser 1.1 (test)" };
  expect(await canListen(fakeMaker().maker, "en", newer)).toBe(true);
  expect(await canListen(fakeMaker().maker, "en", newer)).toBe(true);
});

test("a device without a microphone is not asked at all", async () => {
  let asked_n = 0;
  class Asked {
    static async available(): Promise<string> {
      asked_n++;
      return "available";
    }
    get processLocally() {
      return true;
    }
  }
  expect(await canListen(Asked as unknown as RecogniserMaker, "en", deviceWith(false))).toBe(false);
  expect(asked_n).toBe(0);
});

test("listens only where the device itself understands the language, now", async () => {
  expect(await canListen(fakeMaker().maker, "en", deviceWith())).toBe(true);
  expect(await canListen(fakeMaker("downloadable").maker, "en", deviceWith())).toBe(false);
  expect(await canListen(fakeMaker("unavailable").maker, "en", deviceWith())).toBe(false);
  expect(await canListen(fakeMaker(new Error("no such language")).maker, "en", deviceWith())).toBe(false);
  expect(await canListen(undefined, "en", deviceWith())).toBe(false);
  // An older browser sends the sound away and cannot be told not to.
  class Sending {}
  expect(await canListen(Sending as unknown as RecogniserMaker, "en", deviceWith())).toBe(false);
});

test("hears whole utterances on the device, goes on after a silence, and not after it was stopped", () => {
  const { maker, made } = fakeMaker();
  const heard: string[] = [];
  const ends: string[] = [];
  const listening = listen(
    maker,
    "de",
    (text) => heard.push(text),
    (why) => ends.push(why),
  );
  const one = made[0];
  expect(one).toMatchObject({ lang: "de", isLocal: true, continuous: true, interimResults: false });
  one?.hear("vier", false);
  one?.hear("vier eins");
  one?.onend?.();
  expect(one?.starts_n).toBe(2);
  listening.stop();
  one?.hear("zwei");
  expect(heard).toEqual(["vier eins"]);
  expect(one?.starts_n).toBe(2);
  expect(ends).toEqual([]);
});

test("a refused microphone ends it with its reason; a passing trouble does not", () => {
  const { maker, made } = fakeMaker();
  const ends: string[] = [];
  listen(
    maker,
    "en",
    () => undefined,
    (why) => ends.push(why),
  );
  const one = made[0];
  one?.onerror?.({ error: "no-speech" });
  one?.onend?.();
  expect(one?.starts_n).toBe(2);
  one?.onerror?.({ error: "not-allowed" });
  one?.onend?.();
  expect(one?.starts_n).toBe(2);
  expect(ends).toEqual(["not-allowed"]);
});
