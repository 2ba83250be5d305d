// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.pricebook.PricebookPackage.Literals;
import twinfeed.usecase.book.PriceBookFile;

/** A price book that is edited item by item. */
final class PriceBookEntries extends EntryList {
    private static final List<EAttribute> ATTRIBUTES = List.of(
            Literals.PRICE_ITEM__CODE,
            Literals.PRICE_ITEM__DESCRIPTION,
            Literals.PRICE_ITEM__UNIT,
            Literals.PRICE_ITEM__PRICE,
            Literals.PRICE_ITEM__COST,
            Literals.PRICE_ITEM__MARKUP,
            Literals.PRICE_ITEM__MARGIN,
            Literals.PRICE_ITEM__TAX_CLASS,
            Literals.PRICE_ITEM__MINUTES,
            Literals.PRICE_ITEM__SUPPLIER,
            Literals.PRICE_ITEM__DATE,
            Literals.PRICE_ITEM__HOLDS_UNTIL,
            Literals.PRICE_ITEM__WHOLE_LENGTH,
            Literals.PRICE_ITEM__WASTE,
            Literals.PRICE_ITEM__LEAD_DAYS);

    private static final List<EAttribute> HEAD = List.of(
            Literals.PRICE_BOOK__TITLE,
            Literals.PRICE_BOOK__DATE,
            Literals.PRICE_BOOK__CURRENCY,
            Literals.PRICE_BOOK__LABOUR_RATE,
            Literals.PRICE_BOOK__LABOUR_COST,
            Literals.PRICE_BOOK__LABOUR_TAX_CLASS,
            Literals.PRICE_BOOK__MINIMUM_MINUTES,
            Literals.PRICE_BOOK__VALID_DAYS,
            Literals.PRICE_BOOK__ENERGY_PRICE,
            Literals.PRICE_BOOK__CONTINGENCY,
            Literals.PRICE_BOOK__MARKUP,
            Literals.PRICE_BOOK__ROUNDING,
            Literals.PRICE_BOOK__NOTE);

    private final JobServices services;
    private final PriceBook book;
    private final Path source;
    private final List<EntryField> fields;
    private final List<EntryField> headFields;

    /** An opened book. */
    PriceBookEntries(Path file, FileFingerprint mark, PriceBook book, JobServices services, Words words) {
        super(file, mark, words);
        this.services = services;
        this.book = book;
        this.source = file;
        this.fields = ATTRIBUTES.stream().map(each -> field(each, words)).toList();
        this.headFields = HEAD.stream().map(each -> field(each, words)).toList();
    }

    private static EntryField field(EAttribute attribute, Words words) {
        boolean tax = attribute == Literals.PRICE_ITEM__TAX_CLASS || attribute == Literals.PRICE_BOOK__LABOUR_TAX_CLASS;
        List<Choice> known =
                tax ? taxClasses(words) : attribute == Literals.PRICE_BOOK__ROUNDING ? roundings(words) : List.of();
        return new AttributeField(attribute, words, known);
    }

    private static List<Choice> roundings(Words words) {
        return PriceBookFile.roundings().stream()
                .map(key -> new Choice(key, Objects.requireNonNullElse(words.find("entry.rounding." + key), key)))
                .toList();
    }

    private static List<Choice> taxClasses(Words words) {
        return PriceBookFile.taxClasses().stream()
                .map(key -> new Choice(key, Objects.requireNonNullElse(words.find("entry.tax." + key), key)))
                .toList();
    }

    @Override
    EObject root() {
        return book;
    }

    @Override
    EReference reference() {
        return Literals.PRICE_BOOK__ITEMS;
    }

    @Override
    List<EntryField> fields() {
        return fields;
    }

    @Override
    List<EntryField> headFields() {
        return headFields;
    }

    @Override
    List<String> columns() {
        return Stream.of(
                        Literals.PRICE_ITEM__CODE,
                        Literals.PRICE_ITEM__DESCRIPTION,
                        Literals.PRICE_ITEM__UNIT,
                        Literals.PRICE_ITEM__PRICE,
                        Literals.PRICE_ITEM__COST,
                        Literals.PRICE_ITEM__MINUTES)
                .map(EAttribute::getName)
                .toList();
    }

    @Override
    List<String> numbers() {
        return Stream.of(Literals.PRICE_ITEM__PRICE, Literals.PRICE_ITEM__COST, Literals.PRICE_ITEM__MINUTES)
                .map(EAttribute::getName)
                .toList();
    }

    @Override
    EObject create(String name) {
        PriceItem item = PricebookFactory.eINSTANCE.createPriceItem();
        item.setCode(name);
        item.setDescription(name);
        item.setUnit(words().get("line.unit.each"));
        item.setTaxClass(
                book.getLabourTaxClass() == null ? PriceBookFile.taxClasses().get(0) : book.getLabourTaxClass());
        return item;
    }

    @Override
    String nameField() {
        return Literals.PRICE_ITEM__CODE.getName();
    }

    @Override
    void outOfDate(EObject entry) {
        edits().set(
                        entry,
                        List.of(Literals.PRICE_ITEM__HOLDS_UNTIL),
                        isOutOfDate(entry) ? null : services.today().minusDays(1));
    }

    @Override
    boolean isOutOfDate(EObject entry) {
        PriceItem item = (PriceItem) entry;
        return item.getHoldsUntil() != null && services.today().isAfter(item.getHoldsUntil());
    }

    @Override
    List<EntryRemark> remarks(EObject copy) {
        return PriceBookFile.check((PriceBook) copy, words().locale()).stream()
                .map(one -> new EntryRemark(one.item(), one.field(), one.error(), one.text()))
                .toList();
    }

    @Override
    List<String> lacking(EObject copy) {
        return services.service().lacking((PriceBook) copy).stream()
                .flatMap(one -> one.codes().stream())
                .distinct()
                .toList();
    }

    @Override
    void write(EObject copy, Path target) {
        PriceBookFile.save((PriceBook) copy, target, source);
    }
}
