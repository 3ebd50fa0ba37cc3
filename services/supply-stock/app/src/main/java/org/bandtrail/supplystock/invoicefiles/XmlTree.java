package org.bandtrail.supplystock.invoicefiles;

import java.io.ByteArrayInputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/**
 * An XML document as elements with text, read by the JDK's pull parser. It comes from a stranger: document type
 * declarations and references to entities are refused as such, nothing outside the file is ever opened, and size, depth
 * and number of elements have limits (OWASP, XML External Entity Prevention; the limits are our own choice).
 */
final class XmlTree {
    static final int BYTES_AT_MOST = 5_000_000;
    private static final int DEPTH_AT_MOST = 30;
    private static final int ELEMENTS_AT_MOST = 100_000;

    private final String namespace;
    private final String name;
    private final Map<String, String> attributes = new HashMap<>();
    private final List<XmlTree> children = new ArrayList<>();
    private final StringBuilder text = new StringBuilder();

    private XmlTree(String namespace, String name) {
        this.namespace = namespace;
        this.name = name;
    }

    /**
     * Reads a document.
     *
     * @throws UnreadableInvoice if it is too large, not well formed, or tries to bring in anything else
     */
    static XmlTree read(byte[] bytes) {
        if (bytes.length > BYTES_AT_MOST) {
            throw new UnreadableInvoice(
                    "", "The file has %d bytes; at most %d are read.".formatted(bytes.length, BYTES_AT_MOST));
        }
        try {
            XMLStreamReader xml = factory().createXMLStreamReader(new ByteArrayInputStream(bytes));
            try {
                return read(xml);
            } finally {
                xml.close();
            }
        } catch (XMLStreamException broken) {
            throw new UnreadableInvoice(List.of(new FileProblem(
                    broken.getLocation() == null ? 0 : broken.getLocation().getLineNumber(),
                    "",
                    "This is no well-formed XML. Ask the supplier for the file again.")));
        }
    }

    private static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_REPLACING_ENTITY_REFERENCES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        factory.setProperty("http://javax.xml.XMLConstants/property/accessExternalDTD", "");
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("Nothing outside the file is opened.");
        });
        return factory;
    }

    private static XmlTree read(XMLStreamReader xml) throws XMLStreamException {
        Deque<XmlTree> open = new ArrayDeque<>();
        XmlTree root = null;
        int elements = 0;
        while (xml.hasNext()) {
            switch (xml.next()) {
                case XMLStreamConstants.START_ELEMENT -> {
                    XmlTree element = element(xml);
                    elements++;
                    limit(element, elements, open.size());
                    if (open.isEmpty()) {
                        root = element;
                    } else {
                        open.element().children.add(element);
                    }
                    open.push(element);
                }
                case XMLStreamConstants.END_ELEMENT -> open.pop();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                    if (!open.isEmpty()) {
                        open.element().text.append(xml.getText());
                    }
                }
                case XMLStreamConstants.DTD, XMLStreamConstants.ENTITY_REFERENCE ->
                    throw new UnreadableInvoice(
                            "", "The file declares a document type or entities, which no UBL invoice does. Refuse it.");
                default -> {
                    // Comments, processing instructions and blanks say nothing about money.
                }
            }
        }
        if (root == null) {
            throw new UnreadableInvoice("", "The file is empty.");
        }
        return root;
    }

    private static void limit(XmlTree element, int elements, int depth) {
        if (elements > ELEMENTS_AT_MOST || depth >= DEPTH_AT_MOST) {
            throw new UnreadableInvoice(
                    element.name,
                    "The file has more than %d elements or %d levels; no invoice has."
                            .formatted(ELEMENTS_AT_MOST, DEPTH_AT_MOST));
        }
    }

    private static XmlTree element(XMLStreamReader xml) {
        String namespace = xml.getNamespaceURI();
        XmlTree element = new XmlTree(namespace == null ? "" : namespace, xml.getLocalName());
        for (int index = 0; index < xml.getAttributeCount(); index++) {
            element.attributes.put(xml.getAttributeLocalName(index), xml.getAttributeValue(index));
        }
        return element;
    }

    String namespace() {
        return namespace;
    }

    String name() {
        return name;
    }

    /** The text without surrounding blanks. */
    String text() {
        return text.toString().strip();
    }

    /** The value of an attribute, or empty. */
    String attribute(String attribute) {
        return attributes.getOrDefault(attribute, "").strip();
    }

    /** The elements of this name right below. */
    Stream<XmlTree> all(String child) {
        return children.stream().filter(each -> each.name.equals(child));
    }

    /** The first element down a path of names, if there is one. */
    Optional<XmlTree> at(String... path) {
        Optional<XmlTree> here = Optional.of(this);
        for (String step : path) {
            here = here.flatMap(element -> element.all(step).findFirst());
        }
        return here;
    }

    /** The text of the first element down a path, or null if there is none or it is blank. */
    @Nullable
    String textAt(String... path) {
        return at(path).map(XmlTree::text).filter(found -> !found.isEmpty()).orElse(null);
    }
}
