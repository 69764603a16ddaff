// Small enhancements. Every page works without them.
import "/static/live.js";
import "/static/clocks.js";
import "/static/drafts.js";
import "/static/confirm.js";
import "/static/lines.js";
import "/static/folds.js";
import "/static/pack.js";
import "/static/keypad.js";
import "/static/files.js";
import "/static/photos.js";
import "/static/pots.js";
import "/static/ring.js";
import "/static/better.js";
import "/static/cups.js";
import "/static/plies.js";
import "/static/labels.js";
import "/static/kept.js";
