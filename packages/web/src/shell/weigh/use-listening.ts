import { useEffect, useRef, useState } from "react";
import {
  browserRecogniser,
  canListen,
  isSpeaking,
  type Listening,
  listen,
  thisDevice,
} from "../../device/listen.ts";
import { useSettings } from "../say.ts";
import { type Heard, heardWords } from "./heard-words.ts";

export interface Ears {
  /** Whether this device can: else there is no key for it. */
  readonly can: boolean;
  readonly isOpen: boolean;
  /** The browser's word for why it could not go on. */
  readonly ended?: string;
  toggle(): void;
}

/** Listens to digits and four words while it is open; closes with the page. */
export function useListening(onHeard: (heard: Heard) => void): Ears {
  const { language } = useSettings();
  const [can, setCan] = useState(false);
  const [isOpen, setOpen] = useState(false);
  const [ended, setEnded] = useState<string>();
  const hear = useRef(onHeard);
  hear.current = onHeard;
  useEffect(() => {
    let over = false;
    void canListen(browserRecogniser(), language, thisDevice()).then((answer) => !over && setCan(answer));
    return () => {
      over = true;
    };
  }, [language]);
  useEffect(() => {
    const maker = browserRecogniser();
    if (!isOpen || !maker) return;
    const listening: Listening = listen(
      maker,
      language,
      // What it hears while it speaks are its own words.
      (utterance) => !isSpeaking() && hear.current(heardWords(utterance, language)),
      (why) => {
        setEnded(why);
        setOpen(false);
      },
    );
    return () => listening.stop();
  }, [isOpen, language]);
  return {
    can,
    isOpen,
    ...(ended === undefined ? {} : { ended }),
    toggle: () => {
      setEnded(undefined);
      setOpen(!isOpen);
    },
  };
}
