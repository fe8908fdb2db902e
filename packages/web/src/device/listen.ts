/**
 * Speech on the device itself: sound never leaves it. Where the browser cannot promise that (Web Speech API, `processLocally`),
 * there is no listening at all.
 */
export interface Recogniser {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  processLocally: boolean;
  onresult: ((event: HeardEvent) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  abort(): void;
}
export interface RecogniserMaker {
  new (): Recogniser;
  available?(wanted: {
    readonly langs: readonly string[];
    readonly processLocally: boolean;
  }): Promise<string>;
}
interface HeardEvent {
  readonly resultIndex: number;
  readonly results: ArrayLike<{
    readonly isFinal: boolean;
    readonly [alternative: number]: { readonly transcript: string };
  }>;
}

/** What the browser brings; undefined where it brings nothing. */
export const browserRecogniser = (): RecogniserMaker | undefined =>
  (globalThis as { SpeechRecognition?: RecogniserMaker }).SpeechRecognition;

/** What asking needs of the device; tests bring their own. */
export interface HearingDevice {
  hasMicrophone(): Promise<boolean>;
  /** Outlives a page that crashed. */
  readonly memory: Pick<Storage, "getItem" | "setItem" | "removeItem">;
  readonly browser: string;
}

export const thisDevice = (): HearingDevice => ({
  hasMicrophone: async () =>
    ((await navigator.mediaDevices?.enumerateDevices()) ?? []).some(({ kind }) => kind === "audioinput"),
  memory: localStorage,
  browser: navigator.userAgent,
});

const ASKING = "sillwood.listen.asking";
/** A page may be closed while it asks; twice in one browser is no accident. */
const CRASHES_n = 2;

/**
 * Whether this device recognises the language by itself, at once: nothing is fetched for it. Some browsers carry the words of this
 * interface without what stands behind it, and their page crashes when asked: such a browser is asked no more.
 */
export async function canListen(
  maker: RecogniserMaker | undefined,
  language: string,
  { hasMicrophone, memory, browser }: HearingDevice,
): Promise<boolean> {
  if (!maker?.available || !("processLocally" in maker.prototype)) return false;
  try {
    if (!(await hasMicrophone())) return false;
    const [before_n = "0", ...rest] = (memory.getItem(ASKING) ?? "").split(" ");
    const unanswered_n = rest.join(" ") === browser ? Number(before_n) : 0;
    if (unanswered_n >= CRASHES_n) return false;
    memory.setItem(ASKING, `${unanswered_n + 1} ${browser}`);
    const answer = await maker
      .available({ langs: [language], processLocally: true })
      .finally(() => memory.removeItem(ASKING));
    return answer === "available";
  } catch {
    return false;
  }
}

export interface Listening {
  stop(): void;
}

/** Errors after which listening again would only fail again. */
const LASTING = new Set(["not-allowed", "service-not-allowed", "language-not-supported", "audio-capture"]);

/**
 * Listens until it is stopped: a browser ends a recognition after a silence, so it is begun again.
 *
 * @param onHeard one whole utterance
 * @param onEnd listening came to an end by itself, with the browser's word for why
 */
export function listen(
  maker: RecogniserMaker,
  language: string,
  onHeard: (utterance: string) => void,
  onEnd: (why: string) => void,
): Listening {
  const recogniser = new maker();
  let over: string | undefined;
  recogniser.lang = language;
  recogniser.continuous = true;
  recogniser.interimResults = false;
  recogniser.processLocally = true;
  recogniser.onresult = ({ resultIndex, results }) => {
    if (over !== undefined) return;
    for (let i = resultIndex; i < results.length; i++) {
      const result = results[i];
      if (result?.isFinal && result[0]) onHeard(result[0].transcript);
    }
  };
  recogniser.onerror = ({ error }) => {
    if (LASTING.has(error)) over ??= error;
  };
  recogniser.onend = () => {
    if (over === undefined) recogniser.start();
    else if (over !== "") onEnd(over);
  };
  recogniser.start();
  return {
    stop() {
      over = "";
      recogniser.abort();
    },
  };
}

/** Says something aloud with a voice of this device; without one it stays silent, and the words on screen must do. */
export function sayAloud(text: string, language: string): void {
  const speech = globalThis.speechSynthesis as SpeechSynthesis | undefined;
  const voice = speech?.getVoices().find((one) => one.localService && one.lang.startsWith(language));
  if (!speech || !voice) return;
  const utterance = new SpeechSynthesisUtterance(text);
  utterance.voice = voice;
  utterance.lang = voice.lang;
  speech.cancel();
  speech.speak(utterance);
}

/** Whether the device itself is speaking: what it hears then are its own words. */
export const isSpeaking = (): boolean =>
  (globalThis.speechSynthesis as SpeechSynthesis | undefined)?.speaking ?? false;
