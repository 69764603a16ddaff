package fayline.app.pdf;

/** The style of printed cards: black on white, one font, sizes for a bench in poor light. */
public final class CardStyle {
    private CardStyle() {}

    /** The style sheet for a paper. */
    public static String css(Paper paper) {
        return """
            @font-face { font-family: 'Atkinson Hyperlegible'; src: url(bundled:Regular); }
            @font-face { font-family: 'Atkinson Hyperlegible'; src: url(bundled:Bold); font-weight: 700; }
            @page { size: %s; margin: 11mm 13mm 15mm 13mm;
              @bottom-left { content: element(foot); width: 80%%; vertical-align: top; }
              @bottom-right { content: counter(page) ' / ' counter(pages); font: 8pt 'Atkinson Hyperlegible'; vertical-align: top; } }
            body { font-family: 'Atkinson Hyperlegible'; font-size: 10pt; line-height: 1.25; color: #000; margin: 0; }
            .card { page-break-after: always; }
            .card:last-child { page-break-after: auto; }
            .foot { position: running(foot); font-size: 8pt; color: #333; }
            h1 { font-size: 19pt; margin: 0 0 1mm 0; line-height: 1.15; }
            h2 { font-size: 11.5pt; margin: 2.6mm 0 0.6mm 0; border-bottom: 0.3mm solid #000; page-break-after: avoid; }
            p { margin: 0 0 1mm 0; } ol, ul { margin: 0 0 1mm 0; padding-left: 7mm; } li { margin-bottom: 0.8mm; page-break-inside: avoid; }
            .made { font-size: 13.5pt; font-weight: 700; }
            .hand { border: 0.6mm solid #000; padding: 0 2mm; }
            .small { font-size: 8.5pt; color: #333; } .strong { font-weight: 700; }
            table { border-collapse: collapse; }
            td, th { text-align: left; vertical-align: top; padding: 0.4mm 3mm 0.4mm 0; font-weight: 400; }
            tr { page-break-inside: avoid; }
            table.head { width: 100%%; } td.code { width: 26mm; text-align: center; padding-right: 0; }
            table.facts th { color: #333; white-space: nowrap; padding-right: 5mm; }
            table.wrapped th { white-space: normal; width: 55mm; }
            .box { border: 0.4mm solid #000; padding: 1.2mm 2.5mm; margin: 1.6mm 0; page-break-inside: avoid; }
            .hold { border: 0.9mm double #000; } .label { font-weight: 700; margin-bottom: 1mm; }
            .sign { margin-top: 4mm; }
            .whole { page-break-inside: avoid; }
            table.scale { width: 100%%; margin-bottom: 1mm; } table.scale th { font-size: 8.5pt; color: #333; border-bottom: 0.2mm solid #000; }
            table.scale td { font-size: 12.5pt; border-bottom: 0.2mm solid #000; white-space: nowrap; }
            .tickbox { padding-right: 4mm; white-space: nowrap; }
            table.rows, table.ticked { width: 100%%; -fs-table-paginate: paginate; }
            table.rows th { font-size: 8.5pt; color: #333; } table.rows td, table.ticked td { border-top: 0.15mm solid #777; }
            td.num, th.num { text-align: right; white-space: nowrap; } td.mark { width: 6mm; white-space: nowrap; }
            td.line { width: 45mm; } .marked { display: inline-block; width: 3.6mm; height: 3.4mm; vertical-align: -0.5mm; }
            table.pictures td.beside { width: 50%%; } table.pictures h2 { margin-top: 0; }
            table.pictures { margin: 2mm 0; page-break-inside: avoid; } table.pictures td { padding-right: 4mm; }
            table.done { width: 100%%; margin-top: 3mm; page-break-inside: avoid; } table.done td { width: 33%%; border: 0.2mm solid #000; height: 9mm; padding: 1mm 2mm; font-size: 8.5pt; color: #333; }
            """.formatted(paper.size());
    }
}
