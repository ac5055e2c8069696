package org.evenhand.hostile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Texts that would run or fetch something if a page obeyed them. What they run calls {@code hit}, what they fetch lies at
 * {@code hostile.invalid}, a name that never resolves (RFC 2606).
 *
 * <p>The kinds are those of common knowledge about cross-site scripting, written out for these tests: no source.
 */
final class HostileStrings {

    static final String ELSEWHERE = "hostile.invalid";

    private static final String FETCHED = "https://" + ELSEWHERE + "/x";

    /** Ways out of where a text may stand: attributes, elements whose content is text, comments, scripts, templates. */
    private static final List<String> WAYS_OUT = List.of(
            "",
            "\">",
            "'>",
            "\" autofocus onfocus=hit(0) x=\"",
            "' onpointerover='hit(0)' x='",
            "` onmouseover=`hit(0)` x=`",
            "</title>",
            "</textarea>",
            "</style>",
            "</script>",
            "</noscript>",
            "</template>",
            "-->",
            "--!>",
            "]]>",
            "</svg>",
            "</math>",
            "</table>",
            "</button></form>",
            "\\\");",
            "\\u0022>");

    private static final List<String> MARKUP = List.of(
            "<script>hit(1)</script>",
            "<ScRiPt>hit(1)</sCrIpT>",
            "<script src=" + FETCHED + "></script>",
            "<script/type=module>hit(1)</script>",
            "<script type=application/ld+json>{\"@context\":\"" + FETCHED + "\"}</script>",
            "<img src=x onerror=hit(2)>",
            "<img/src=`x`/onerror=hit(2)>",
            "<img src=" + FETCHED + ">",
            "<img srcset='" + FETCHED + " 2x'>",
            "<svg onload=hit(3)>",
            "<svg><script>hit(3)</script></svg>",
            "<svg><a xlink:href=javascript:hit(3)><text>x</text></a></svg>",
            "<svg><animate onbegin=hit(3) attributeName=x dur=1s>",
            "<svg><use href='data:image/svg+xml,<svg id=x onload=hit(3) />#x'/></svg>",
            "<svg><foreignObject><iframe onload=hit(3)></iframe></foreignObject></svg>",
            "<math><mtext><table><mglyph><style><!--</style><img title=\"--&gt;&lt;img src=1 onerror=hit(4)&gt;\">",
            "<math href=javascript:hit(4)>x</math>",
            "<iframe srcdoc='<script>parent.hit(5)</script>'></iframe>",
            "<iframe src=javascript:parent.hit(5)></iframe>",
            "<object data=javascript:hit(5)></object>",
            "<embed src=" + FETCHED + ">",
            "<body onload=hit(6)>",
            "<details open ontoggle=hit(6)>x</details>",
            "<video><source onerror=hit(6)></video>",
            "<audio src=" + FETCHED + " autoplay>",
            "<input autofocus onfocus=hit(6)>",
            "<marquee onstart=hit(6)>x</marquee>",
            "<link rel=stylesheet href=" + FETCHED + ">",
            "<link rel=prefetch href=" + FETCHED + ">",
            "<meta http-equiv=refresh content='0;url=" + FETCHED + "'>",
            "<base href=" + FETCHED + "/>",
            "<style>*{background:url(" + FETCHED + ")}</style>",
            "<style>@import '" + FETCHED + "';</style>",
            "<div style=background:url(" + FETCHED + ")>x</div>",
            "<form action=javascript:hit(7)><button autofocus>x</button></form>",
            "<button formaction=javascript:hit(7)>x</button>",
            "<a href=javascript:hit(8) autofocus>x</a>",
            "<a href='jav&#x09;ascript:hit(8)'>x</a>",
            "<noscript><p title=\"</noscript><img src=x onerror=hit(9)>\"></noscript>",
            "<template><script>hit(9)</script></template>",
            "<select><template><img src=x onerror=hit(9)></template></select>",
            "<table><td background=" + FETCHED + ">x</table>",
            "<p><svg><style><a id=\"</style><img src=x onerror=hit(9)>\">",
            "<form><math><mtext></form><form><mglyph><style></math><img src onerror=hit(9)>",
            "<x onclick=hit(9) tabindex=1 id=x></x>",
            "<!--><img src=x onerror=hit(9)>-->",
            "<![CDATA[><img src=x onerror=hit(9)>]]>",
            "<?xml-stylesheet href='javascript:hit(9)'?>",
            "<!DOCTYPE x [<!ENTITY y SYSTEM 'file:///etc/passwd'>]><x>&y;</x>");

    private static final List<String> ADDRESSES = List.of(
            "javascript:hit(10)",
            "JaVaScRiPt:hit(10)",
            "java&#115;cript:hit(10)",
            "&#0000106avascript:hit(10)",
            "&#x6A;avascript&colon;hit(10)",
            "java&Tab;script:hit(10)",
            "java&NewLine;script:hit(10)",
            "\tjavascript:hit(10)",
            "javascript&#58;hit(10)",
            "javascript://x%0Ahit(10)",
            "vbscript:hit(10)",
            "data:text/html,<script>hit(10)</script>",
            "data:text/html;base64,PHNjcmlwdD5oaXQoMTApPC9zY3JpcHQ+",
            "data:image/svg+xml,<svg onload=hit(10) xmlns='http://www.w3.org/2000/svg'/>",
            "blob:" + FETCHED,
            "file:///etc/passwd",
            "//" + ELSEWHERE + "/x",
            "\\\\" + ELSEWHERE + "\\x",
            "evidence:\"><img src=x onerror=hit(10)>",
            "given:javascript:hit(10)",
            "view-source:javascript:hit(10)");

    private static final List<String> OTHERS = List.of(
            "${7*7}${hit(11)}",
            "<#assign x=\"freemarker.template.utility.Execute\"?new()>${x(\"id\")}",
            "[#list 1..9 as x]x[/#list][=7*7]",
            "<@p.page/><#include \"/etc/passwd\">",
            "#{7*7}{{constructor.constructor('hit(11)')()}}{% raw %}",
            "\"}</script><script>hit(11)</script>",
            "\",\"@id\":\"javascript:hit(11)\",\"x\":\"",
            "</script \n><img src=x onerror=hit(11)>",
            "<!--<script>hit(11)",
            "\u2028hit(11)\u2029//",
            "\\u003cscript\\u003ehit(11)\\u003c/script\\u003e",
            "&lt;script&gt;hit(11)&lt;/script&gt;",
            "&amp;lt;img src=x onerror=hit(11)&amp;gt;",
            "&#60;img src=x onerror=hit(11)&#62;",
            "%3Cscript%3Ehit(11)%3C/script%3E",
            "\uFF1Cscript\uFF1Ehit(11)\uFF1C/script\uFF1E",
            "+ADw-script+AD4-hit(11)+ADw-/script+AD4-",
            "\u00BCscript\u00BEhit(11)\u00BC/script\u00BE",
            "=HYPERLINK(\"" + FETCHED + "\",\"x\")",
            "@SUM(1+1)*cmd|' /C calc'!A0",
            "-1+1|x",
            "__proto__",
            "constructor",
            "hasOwnProperty",
            "'; DROP TABLE runs; --",
            "a\u0301\u0302\u0303\u0304\u0305\u0306\u0307 e\u0334\u0335\u0336",
            "\uD83D\uDE00\u200D\uD83D\uDE00 \uFEFF\u200B\u00AD",
            "x".repeat(3000),
            "../../../../etc/passwd",
            "C:\\Windows\\system32",
            "$(hit 11) `hit 11`");

    private HostileStrings() {}

    /** All, each once. */
    static List<String> all() {
        Set<String> all = new LinkedHashSet<>();
        for (int i = 0; i < MARKUP.size(); i++) {
            all.add(MARKUP.get(i));
            // Each with a few of the ways out, and each way out with many of them.
            for (int j = 1; j <= 4; j++) {
                all.add(WAYS_OUT.get((i * 4 + j) % WAYS_OUT.size()) + MARKUP.get(i));
            }
        }
        for (String address : ADDRESSES) {
            all.add(address);
            all.add("[x](" + address + ")");
            all.add("[x](<" + address + ">)");
            all.add("![x](" + address + " \"y\")");
            all.add("<" + address + ">");
            all.add("[x][r]\n\n[r]: " + address);
        }
        all.addAll(OTHERS);
        all.add("![x](" + FETCHED + ".png \"y\")");
        all.add("[x](" + FETCHED + " \"\\\" onfocus=hit(12) autofocus x=\\\"\")");
        all.add("[<img src=x onerror=hit(12)>](https://results.example.org/)");
        all.add("`<img src=x onerror=hit(12)>`");
        all.add("```\"onload=hit(12)\n<img src=x onerror=hit(12)>\n```");
        all.add("| a | <img src=x onerror=hit(12)> |\n| --- | :-: |\n| [x](javascript:hit(12)) | y |");
        all.add("<https://results.example.org/\"onfocus=hit(12)autofocus=\">");
        return List.copyOf(all);
    }

    /** Those that stand on one line. */
    static List<String> lines() {
        List<String> lines = new ArrayList<>(all());
        lines.removeIf(s -> s.contains("\n"));
        return lines;
    }
}
