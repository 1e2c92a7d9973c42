package org.drillwright.print.command.editor.protocol;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.autofix.Edit;
import org.drillwright.autofix.Fix;
import org.drillwright.editing.Offer;
import org.drillwright.editing.Symbol;
import org.drillwright.source.Span;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemKind;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.SymbolKind;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Plain values as the protocol writes them. */
record ProtocolJson(Positions positions, Locale language) {

    TextEdit edit(Edit edit) {
        return new TextEdit(positions.range(edit.span()), edit.text());
    }

    /** In the order in which they are offered, however the editor would sort them. */
    List<CompletionItem> items(List<Offer> offers) {
        List<CompletionItem> items = new ArrayList<>();
        for (Offer offer : offers) {
            CompletionItem item = new CompletionItem(offer.label());
            item.setKind(kind(offer.kind()));
            item.setSortText(String.format("%04d", items.size()));
            item.setTextEdit(Either.forLeft(edit(offer.edit())));
            if (!offer.detail().isEmpty()) {
                item.setDetail(offer.detail().in(language));
            }
            if (!offer.told().isEmpty()) {
                item.setDocumentation(offer.told().in(language));
            }
            items.add(item);
        }
        return items;
    }

    private static CompletionItemKind kind(Offer.Kind kind) {
        return switch (kind) {
            case KEY -> CompletionItemKind.Property;
            case WORD -> CompletionItemKind.EnumMember;
            case DRILL -> CompletionItemKind.Reference;
            case TURN -> CompletionItemKind.Text;
        };
    }

    CodeAction action(Fix fix) {
        CodeAction action = new CodeAction(fix.title().in(language));
        action.setKind(CodeActionKind.QuickFix);
        action.setDiagnostics(fix.mended().stream()
                .map(finding -> Publishing.diagnostic(finding, positions, language))
                .toList());
        if (fix.onlyOne()) {
            action.setIsPreferred(true);
        }
        return action;
    }

    List<DocumentSymbol> symbols(List<Symbol> symbols) {
        return symbols.stream().map(this::symbol).toList();
    }

    private DocumentSymbol symbol(Symbol symbol) {
        return new DocumentSymbol(
                symbol.label().in(language),
                symbol.parts().isEmpty() ? SymbolKind.String : SymbolKind.Event,
                positions.range(symbol.whole().to(symbol.name())),
                positions.range(symbol.name()),
                symbol.detail(),
                symbols(symbol.parts()));
    }

    /** Each count that takes more than a line. */
    List<FoldingRange> folds(List<Symbol> symbols) {
        return symbols.stream()
                .map(symbol -> positions.range(symbol.whole()))
                .filter(range -> range.getStart().getLine() < range.getEnd().getLine())
                .map(range -> new FoldingRange(
                        range.getStart().getLine(), range.getEnd().getLine()))
                .toList();
    }

    /** A whole text in place of the one that stands there; nothing but the part that differs is touched. */
    List<TextEdit> rewritten(String text) {
        String old = positions.text().text();
        if (old.equals(text)) {
            return List.of();
        }
        int shorter = Math.min(old.length(), text.length());
        int head = 0;
        while (head < shorter && old.charAt(head) == text.charAt(head)) {
            head++;
        }
        head = old.lastIndexOf('\n', head - 1) + 1;
        int tail = 0;
        while (tail < shorter - head && old.charAt(old.length() - 1 - tail) == text.charAt(text.length() - 1 - tail)) {
            tail++;
        }
        // Neither a pair of surrogates nor the two signs of a line's end may be parted.
        while (tail > 0 && isPair(old, old.length() - tail)) {
            tail--;
        }
        Span changed = new Span(head, old.length() - tail);
        return List.of(edit(new Edit(changed, text.substring(head, text.length() - tail))));
    }

    private static boolean isPair(String text, int at) {
        return at > 0
                && (Character.isLowSurrogate(text.charAt(at))
                        || (text.charAt(at) == '\n' && text.charAt(at - 1) == '\r'));
    }
}
