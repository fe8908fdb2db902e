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

test("listens only where the device itself understands the language, now", async () => {
  expect(await canListen(fakeMaker().maker, "en")).toBe(true);
  expect(await canListen(fakeMaker("downloadable").maker, "en")).toBe(false);
  expect(await canListen(fakeMaker("unavailable").maker, "en")).toBe(false);
  expect(await canListen(fakeMaker(new Error("no such language")).maker, "en")).toBe(false);
  expect(await canListen(undefined, "en")).toBe(false);
  // An older browser sends the sound away and cannot be told not to.
  class Sending {}
  expect(await canListen(Sending as unknown as RecogniserMaker, "en")).toBe(false);
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
