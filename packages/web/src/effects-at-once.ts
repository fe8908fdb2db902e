import { options } from "preact";

// Effects of a key or a touch come at once, as React's do: the next key must find the focus where the last one put it.
options.requestAnimationFrame = (flush) => queueMicrotask(flush);
