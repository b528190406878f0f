// SPDX-FileCopyrightText: 2026 The Halfcup developers
// SPDX-License-Identifier: Apache-2.0
//
// What cpp/device/web/browser.h and cpp/place/web_position_source.cpp ask of the browser.
addToLibrary({
  $BROWSER: {
    wakeLock: null,
    wantsWakeLock: false,
    sounds: [],
    audio: null,
    playing: [], // what can still be stopped

    holdWakeLock: async () => {
      if (!BROWSER.wantsWakeLock || BROWSER.wakeLock || document.visibilityState !== 'visible') return;
      try {
        const lock = await navigator.wakeLock.request('screen');
        lock.addEventListener('release', () => {
          if (BROWSER.wakeLock === lock) BROWSER.wakeLock = null;
        });
        if (BROWSER.wantsWakeLock) BROWSER.wakeLock = lock;
        else lock.release();
      } catch {
        // Refused, with a low battery for instance: the screen may then go dark, and the wash goes on.
      }
    },

    // Only after a touch may a page make sounds.
    openAudio() {
      BROWSER.audio ||= new AudioContext();
      if (BROWSER.audio.state === 'suspended') BROWSER.audio.resume();
      return BROWSER.audio;
    },

    play: async (number) => {
      const sound = BROWSER.sounds[number];
      if (!sound) return;
      const audio = BROWSER.openAudio();
      sound.decoded ||= audio.decodeAudioData(sound.wav.buffer.slice(0));
      const source = new AudioBufferSourceNode(audio, { buffer: await sound.decoded });
      source.connect(audio.destination);
      source.onended = () => (BROWSER.playing = BROWSER.playing.filter((each) => each !== source));
      BROWSER.playing.push(source);
      source.start();
    },

    // A voice that is not on the phone would send what is said to somebody's server.
    voiceFor: (language) =>
      globalThis.speechSynthesis?.getVoices().find((voice) => voice.localService && voice.lang.toLowerCase().startsWith(language)),

    download(file) {
      const link = document.createElement('a');
      link.href = URL.createObjectURL(file);
      link.download = file.name;
      document.body.append(link);
      link.click();
      link.remove();
      // The browser reads the file after the click; how long after, it does not tell.
      setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    },

    mayShare: (file) => !!navigator.canShare?.({ files: [file] }),
  },

  halfcupHasWakeLock: () => ('wakeLock' in navigator ? 1 : 0),
  halfcupWantWakeLock__deps: ['$BROWSER'],
  halfcupWantWakeLock__postset: () => "document.addEventListener('visibilitychange', () => BROWSER.holdWakeLock());",
  halfcupWantWakeLock: (wanted) => {
    BROWSER.wantsWakeLock = !!wanted && 'wakeLock' in navigator;
    if (BROWSER.wantsWakeLock) {
      BROWSER.holdWakeLock();
    } else {
      BROWSER.wakeLock?.release();
      BROWSER.wakeLock = null;
    }
  },

  halfcupHasSounds: () => ('AudioContext' in globalThis ? 1 : 0),
  halfcupLoadSound__deps: ['$BROWSER'],
  halfcupLoadSound: (number, wav, bytes) => {
    BROWSER.sounds[number] = { wav: HEAPU8.slice(wav, wav + bytes) };
  },
  halfcupPlaySound__deps: ['$BROWSER', '$KEPT'],
  halfcupPlaySound: (number) => KEPT.whenKept(() => BROWSER.play(number)),
  halfcupStopSounds__deps: ['$BROWSER'],
  halfcupStopSounds: () => {
    for (const source of BROWSER.playing) source.stop();
  },

  halfcupHasVibration: () => ('vibrate' in navigator ? 1 : 0),
  halfcupVibrate__deps: ['$KEPT'],
  halfcupVibrate: (milliseconds) => KEPT.whenKept(() => navigator.vibrate?.(milliseconds)),

  halfcupHasVoice__deps: ['$BROWSER', '$UTF8ToString'],
  halfcupHasVoice: (language) => (BROWSER.voiceFor(UTF8ToString(language)) ? 1 : 0),
  halfcupSay__deps: ['$BROWSER', '$KEPT', '$UTF8ToString'],
  halfcupSay: (sentence, language) => {
    const words = new SpeechSynthesisUtterance(UTF8ToString(sentence));
    words.voice = BROWSER.voiceFor(UTF8ToString(language)) ?? null;
    words.lang = words.voice?.lang ?? '';
    KEPT.whenKept(() => {
      speechSynthesis.cancel();
      speechSynthesis.speak(words);
    });
  },
  halfcupHush: () => globalThis.speechSynthesis?.cancel(),
  halfcupOnVoices: (changed, self) => {
    globalThis.speechSynthesis?.addEventListener('voiceschanged', () => {{{ makeDynCall('vp', 'changed') }}}(self));
  },

  halfcupIsSeen: () => (document.visibilityState === 'visible' ? 1 : 0),
  halfcupOnSeen: (changed, self) => {
    document.addEventListener('visibilitychange', () => {{{ makeDynCall('vp', 'changed') }}}(self));
  },

  // The start page has an element whose padding is what env() says.
  halfcupInsets: (four) => {
    const element = document.getElementById('insets');
    const style = element && getComputedStyle(element);
    ['paddingLeft', 'paddingTop', 'paddingRight', 'paddingBottom'].forEach((edge, i) => {
      HEAPF64[(four >> 3) + i] = style ? parseFloat(style[edge]) || 0 : 0;
    });
  },
  halfcupOnResized: (changed, self) => {
    addEventListener('resize', () => {{{ makeDynCall('vp', 'changed') }}}(self));
  },

  halfcupShare__deps: ['$BROWSER', '$FS', '$UTF8ToString'],
  halfcupShare: (path, mimeType) => {
    const name = UTF8ToString(path);
    const file = new File([FS.readFile(name)], name.split('/').pop(), { type: UTF8ToString(mimeType) });
    // Browsers share well-known kinds of files only; all others can be saved.
    if (!BROWSER.mayShare(file)) return BROWSER.download(file);
    navigator.share({ files: [file] }).catch((error) => {
      if (error.name !== 'AbortError') BROWSER.download(file); // that one is the keeper's own
    });
  },

  // No list of endings: phones do not know ours, and would show the file greyed out.
  halfcupChoose__deps: ['$FS', '$UTF8ToString', '$stringToNewUTF8', 'free'],
  halfcupChoose: (endings, folder, chosen, cancelled, self) => {
    const into = UTF8ToString(folder);
    const input = document.createElement('input');
    input.type = 'file';
    input.hidden = true;
    document.body.append(input);
    const giveUp = () => {
      input.remove();
      {{{ makeDynCall('vp', 'cancelled') }}}(self);
    };
    input.addEventListener('cancel', giveUp);
    input.addEventListener('change', async () => {
      const file = input.files[0];
      if (!file) return giveUp();
      let path;
      try {
        const bytes = new Uint8Array(await file.arrayBuffer());
        FS.mkdirTree(into);
        path = into + '/' + (file.name.replaceAll('/', '_') || 'file');
        FS.writeFile(path, bytes);
      } catch {
        return giveUp();
      }
      input.remove();
      const text = stringToNewUTF8(path);
      {{{ makeDynCall('vpp', 'chosen') }}}(self, text);
      _free(text);
    });
    input.click();
  },

  // Nothing is under way when this is asked for, so that a version that waits for the end of a wash may come now.
  halfcupLoadAnew: async () => {
    try {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration.update();
      const next = registration.installing ?? registration.waiting;
      if (next)
        await new Promise((resolve) => {
          const look = () => {
            if (next.state === 'installed') next.postMessage('take over');
            else if (next.state === 'activated' || next.state === 'redundant') resolve();
          };
          next.addEventListener('statechange', look);
          look();
        });
    } catch (error) {
      console.warn(error); // no network, no worker: what is there is loaded again
    }
    location.reload();
  },

  halfcupWatchPosition: (found, lost, self) => {
    if (!navigator.geolocation) return 0;
    return navigator.geolocation.watchPosition(
      ({ coords, timestamp }) => {{{ makeDynCall('vpdddd', 'found') }}}(self, coords.latitude, coords.longitude, coords.accuracy, timestamp),
      (error) => {{{ makeDynCall('vpi', 'lost') }}}(self, error.code),
      // Not a place that is remembered: the keeper may have driven to another yard.
      { enableHighAccuracy: true, maximumAge: 0, timeout: 15_000 },
    );
  },
  halfcupForgetPosition: (watch) => {
    if (watch) navigator.geolocation.clearWatch(watch);
  },
});
